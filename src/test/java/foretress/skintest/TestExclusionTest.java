package foretress.skintest;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.AnyOf;
import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Situation;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Loaded;
import foretress.questionnaire.Answers;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Whom a salon must not test")
class TestExclusionTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final TestExclusion MAY_TEST = new TestExclusion(KNOWLEDGE);
    private static final Set<String> COLOUR = Set.of("oxidative-dye", "peroxide", "alkali");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final Facts WELL = KNOWLEDGE.factFinder().find(new Situation(TODAY,
        Optional.of(LocalDate.of(1990, 1, 1)), COLOUR, KNOWLEDGE.questionnaire(),
        KNOWLEDGE.answeredWell(Answers.NONE, COLOUR), KNOWLEDGE.policy("uk"), List.of()));

    private static Assessment assessed(Facts facts) {
        return Assessor.assess(KNOWLEDGE.ruleSet(), facts, KNOWLEDGE.ruleSet().services());
    }

    private static FactDef fact(String id) {
        return KNOWLEDGE.ruleSet().fact(id).orElseThrow();
    }

    private static Facts but(String fact, String is) {
        return settled(WELL.with(FactValue.known(fact(fact), is, List.of())));
    }

    private static Facts settled(Facts facts) {
        return facts.with(AnyOf.find(fact("reactor"), TestExclusionTest::fact, part -> facts.get(part.id())));
    }

    @Test
    void aClientWithNothingAgainstHerMayBeTestedHoweverTheTestCameOutBefore() {
        for (String earlier : List.of("not-done", "negative")) {
            Assessment well = assessed(but("skin-test", earlier));
            assertThat(MAY_TEST.mustNot(well, COLOUR)).as(earlier).isFalse();
            assertThat(MAY_TEST.against(well, COLOUR)).as(earlier).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({ "colour-reaction, delayed", "colour-reaction, immediate", "tattoo, reacted",
        "dye-allergy, confirmed", "age, below-salon-age", "skin-test, positive", "bleach-reaction, delayed" })
    void whoReactedIsKnownToBeAllergicOrTooYoungIsNotTestedAndIsToldWhy(String fact, String is) {
        Assessment against = assessed(but(fact, is));
        assertThat(MAY_TEST.mustNot(against, COLOUR)).isTrue();
        assertThat(MAY_TEST.against(against, COLOUR)).isNotEmpty().noneMatch(Finding::onlyIfUnknown);
    }

    @Test
    void afterADoctorsYesWhoReactedToLightenerIsTestedAsEverybodyIs() {
        Facts advised =
            but("bleach-reaction", "delayed").with(FactValue.known(fact("lightener-advice"), "with-care", List.of()));
        assertThat(MAY_TEST.mustNot(assessed(advised), COLOUR)).isFalse();
        assertThat(MAY_TEST.against(assessed(advised), COLOUR)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({ "colour-reaction", "tattoo", "dye-allergy", "bleach-reaction" })
    void whatMayBeAndIsNotKnownToBeForbidsNoTest(String fact) {
        Assessment unknown = assessed(settled(WELL.with(FactValue.unknown(fact(fact), List.of()))));
        assertThat(unknown.findings()).as("it is found").anyMatch(Finding::onlyIfUnknown);
        assertThat(MAY_TEST.mustNot(unknown, COLOUR)).isFalse();
        assertThat(MAY_TEST.against(unknown, COLOUR)).isEmpty();
    }

    @Test
    @DisplayName("R28: after a dermatologist's yes a plant powder may be tested on who reacted to dye, and no dye may")
    void afterADoctorsYesAPlantMayBeTestedAndNoDye() {
        Facts reacted = but("colour-reaction", "immediate");
        Set<String> plant = Set.of("plant-dye");
        assertThat(MAY_TEST.mustNot(assessed(reacted), plant)).isTrue();
        assertThat(MAY_TEST.against(assessed(reacted), plant)).extracting(Finding::ruleId)
            .contains("plant-colour-after-a-reaction");
        Assessment yes = assessed(and(reacted, "reactor-advice", "with-care"));
        assertThat(MAY_TEST.mustNot(yes, plant)).isFalse();
        assertThat(MAY_TEST.mustNot(yes, Set.of("plant-dye", "oxidative-dye"))).isTrue();
        assertThat(MAY_TEST.mustNot(yes, COLOUR)).isTrue();
    }

    @Test
    void whatHasNothingToDoWithADyeForbidsNoTest() {
        Assessment metal = assessed(but("metal", fact("metal").classes().get(fact("metal").worst())));
        assertThat(metal.findings()).isNotEmpty();
        assertThat(MAY_TEST.mustNot(metal, COLOUR)).isFalse();
    }

    private static List<String> against(Facts facts) {
        return MAY_TEST.against(assessed(facts), COLOUR).stream().map(Finding::ruleId).toList();
    }

    private static Facts and(Facts facts, String fact, String is) {
        return settled(facts.with(FactValue.known(fact(fact), is, List.of())));
    }

    @Test
    void nothingIsNamedButWhatKeepsADyeWaitingOverTheSameThingAndWhatIsTelephonedAbout() {
        assertThat(against(but("bleach-reaction", "delayed"))).containsExactly("reacted-late-to-lightener");
        assertThat(against(but("bleach-reaction", "immediate"))).contains("reacted-to-lightener-at-once",
            "no-skin-test-after-lightener-reaction");
        Facts more = and(and(and(but("bleach-reaction", "delayed"), "metal", "suspected"), "asthma", "marker"),
            "steroid-tablets", "masking");
        assertThat(against(more)).as("metal, asthma and a steroid have nothing to do with it")
            .containsExactly("reacted-late-to-lightener");
        assertThat(against(and(but("bleach-reaction", "delayed"), "perm-reaction", "immediate")))
            .as("what is telephoned about is named").contains("reacted-to-perm-at-once");
    }

    @Test
    void ofWhoIsLeftOutNothingThatOnlyMayBeIsNamed() {
        Facts unsure = but("bleach-reaction", "delayed").with(FactValue.unknown(fact("tattoo"), List.of()));
        assertThat(against(unsure)).containsExactly("reacted-late-to-lightener");
    }

    @Test
    void whatPreventsADyeIsNamedAlone() {
        assertThat(against(and(but("age", "below-salon-age"), "bleach-reaction", "delayed"))).isNotEmpty()
            .doesNotContain("reacted-late-to-lightener");
    }

    @Test
    @DisplayName("R28: a plant powder is kept off the skin of whoever has G6PD deficiency until the doctor's word; a dye is not")
    void aPlantPowderWaitsForTheWordOnG6pd() {
        Set<String> plant = Set.of("plant-dye");
        assertThat(MAY_TEST.against(assessed(but("g6pd", "present")), plant)).extracting(Finding::ruleId)
            .containsExactly("plant-colour-and-g6pd");
        assertThat(MAY_TEST.mustNot(assessed(but("g6pd", "present")), plant)).isTrue();
        assertThat(MAY_TEST.mustNot(assessed(but("g6pd", "present")), COLOUR)).isFalse();
        assertThat(MAY_TEST.mustNot(assessed(and(but("g6pd", "present"), "g6pd-advice", "with-care")), plant))
            .isFalse();
        Facts unknown = WELL.with(FactValue.unknown(fact("g6pd"), List.of()));
        assertThat(MAY_TEST.mustNot(assessed(unknown), plant)).isFalse();
    }
}
