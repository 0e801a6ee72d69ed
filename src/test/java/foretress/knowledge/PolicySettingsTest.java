package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessor;
import foretress.assessment.Policy;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Medicine;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each figure a policy sets is honoured: on one side of it the client stands one way, on the other side more strictly. */
class PolicySettingsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final BaseClient BASE = new BaseClient(KNOWLEDGE);
    private static final TestFact NEGATIVE =
        TestFact.sound("skin-test", "negative", TODAY.minusDays(3), TODAY.minusDays(1));

    @ParameterizedTest
    @CsvSource({
        "chemotherapy, year, chemotherapy-months, 6, 7",
        "chemotherapy, longer, chemotherapy-months, 12, 13",
        "chemotherapy, longer, chemotherapy-regrown-cm, 40, 41", // the base client's hair measures 40 cm
        "radiotherapy-head, longer, radiotherapy-weeks, 6, 7" })
    void aLongerWindowAfterCancerTreatmentPrevents(String question, String answer, String figure, int open,
        int closed) {
        Answers said =
            Answers.NONE.with("cancer-care", Answer.Chosen.of("yes")).with(question, Answer.Chosen.of(answer));
        assertThat(standing("colour-whole", said, uk().with(figure, open))).isEqualTo(Weight.RESTRICTS);
        assertThat(standing("colour-whole", said, uk().with(figure, closed))).isEqualTo(Weight.PREVENTS);
    }

    @Test
    void aStingCountsAsAReactionWhereThePolicyKeepsToTheLetterOfTheLabel() {
        Answers sting = Answers.NONE.with("colour-reaction", Answer.Chosen.of("yes"))
            .with("colour-reaction-what", Answer.Chosen.of("sting-rinsed"))
            .with("colour-reaction-soon", Answer.Chosen.of("while-on"));
        assertThat(standing("colour-whole", sting, uk())).isEqualTo(Weight.RESTRICTS);
        assertThat(standing("colour-whole", sting, uk().with("sting-is-a-reaction", 1))).isEqualTo(Weight.PREVENTS);
    }

    @Test
    void aLowDoseMasksToo() {
        Answers prednisone = taking(new Medicine("prednisone", "low", "mouth", "now"));
        assertThat(standing("colour-whole", prednisone, uk())).isEqualTo(Weight.RESTRICTS);
        assertThat(standing("colour-whole", prednisone, uk().with("steroid-low-dose-mg", 5)))
            .isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void aRetinoidOfLongAgoIsLeftOutWhereThePolicyCountsNoMonths() {
        Answers isotretinoin = taking(new Medicine("isotretinoin", "not-asked", "mouth", "longer"));
        assertThat(standing("colour-whole", isotretinoin, uk().with("retinoid-months", 0)))
            .isEqualTo(Weight.NOTHING_FOUND);
        assertThat(standing("colour-whole", isotretinoin, uk())).isEqualTo(Weight.NOTE);
    }

    @Test
    void aLetterOpensNothingWhereThePolicyTakesNone() {
        Answers reacted = Answers.NONE.with("colour-reaction", Answer.Chosen.of("yes")).with("colour-reaction-what",
            Answer.Chosen.of("itch-after"));
        TestFact letter = TestFact.sound("dermatologist-letter", "names-product", TODAY, TODAY);
        assertThat(standing("colour-direct", reacted, uk(), letter)).isEqualTo(Weight.RESTRICTS);
        assertThat(standing("colour-direct", reacted, uk().with("letter-counts", 0), letter))
            .isEqualTo(Weight.PREVENTS);
    }

    @ParameterizedTest
    @CsvSource({
        "perm, permed-hair-weeks, 5, 6, perm-acid, restricts, prevents",
        "relaxer, relaxer-weeks, 5, 6, relaxer-roots, restricts, prevents",
        "keratin, keratin-weeks, 5, 6, smooth-other, note, note" })
    void weeksSinceATreatmentAreThePolicys(String what, String figure, int over, int within, String service,
        String then, String lately) {
        var treatment =
            new SaidTreatment(what, new SaidDate.OnDay(TODAY.minusWeeks(5)), "whole", "salon", "once");
        Answers said = Answers.NONE.with("treatments", new Answer.Treatments(List.of(treatment)));
        TestFact good = TestFact.sound("test-cutting", "good", TODAY, TODAY);
        assertThat(standing(service, said, uk().with(figure, over), good).code()).isEqualTo(then);
        assertThat(standing(service, said, uk().with(figure, within), good).code()).isEqualTo(lately);
    }

    /** A coat of keratin weighs more on a perm within the policy's weeks. */
    @Test
    void keratinWeighsMoreWithinThePolicysWeeks() {
        var keratin =
            new SaidTreatment("keratin", new SaidDate.OnDay(TODAY.minusWeeks(5)), "whole", "salon", "once");
        Answers said = Answers.NONE.with("treatments", new Answer.Treatments(List.of(keratin)));
        assertThat(standing("perm-alkaline", said, uk().with("keratin-weeks", 5))).isEqualTo(Weight.NOTE);
        assertThat(standing("perm-alkaline", said, uk().with("keratin-weeks", 6))).isEqualTo(Weight.TEST_FIRST);
    }

    /** Three months: Morrison and Storrs 1988, seven of seventeen people reacted to hair permed so long before. */
    @Test
    void thePermsAllergenIsCountedOnForThePolicysMonths() {
        Answers rash = Answers.NONE.with("perm-reaction", Answer.Chosen.of("yes"))
            .with("perm-reaction-which", Answer.Chosen.of("perm"))
            .with("perm-reaction-what", Answer.Chosen.of("itch-after"))
            .with("perm-reaction-soon", Answer.Chosen.of("later"))
            .with("perm-reaction-ago", Answer.Chosen.of("year"));
        assertThat(findings("colour-whole", rash, uk())).doesNotContain("permed-hair-still-carries-it");
        assertThat(findings("colour-whole", rash, uk().with("perm-allergen-months", 6)))
            .contains("permed-hair-still-carries-it");
    }

    @ParameterizedTest
    @CsvSource({ "skin-test-validity-months, 1, 0", "skin-test-validity-months, 6, 0" })
    void aTestOfAnEarlierVisitStandsForMonthsOrForOneApplication(String figure, int months, int each) {
        var earlier = new TestFact("skin-test", "negative", TODAY.minusDays(20), Optional.of(TODAY.minusDays(18)),
            true, true, false, false, false);
        assertThat(standing("colour-whole", Answers.NONE, uk().with(figure, months), earlier))
            .isEqualTo(Weight.NOTHING_FOUND);
        assertThat(standing("colour-whole", Answers.NONE, uk().with(figure, each), earlier))
            .isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void minimumAgeAndLawAreThePolicys() {
        assertThat(standing("colour-whole", Answers.NONE, uk().with("minimum-age", 36)))
            .isEqualTo(Weight.NOTHING_FOUND);
        assertThat(standing("colour-whole", Answers.NONE, uk().with("minimum-age", 37))).isEqualTo(Weight.PREVENTS);
        assertThat(standing("lash-brow-tint", Answers.NONE, uk())).isEqualTo(Weight.RESTRICTS);
        assertThat(standing("lash-brow-tint", Answers.NONE, uk().with("lash-tint-allowed", 0)))
            .isEqualTo(Weight.PREVENTS);
    }

    private static Policy uk() {
        return KNOWLEDGE.policy("uk");
    }

    private static Answers taking(Medicine medicine) {
        return Answers.NONE.with("medicines", new Answer.Medicines(List.of(medicine)));
    }

    private static Weight standing(String service, Answers said, Policy policy, TestFact... tests) {
        return assess(service, said, policy, tests).standings().get(0).weight();
    }

    private static List<String> findings(String service, Answers said, Policy policy) {
        return assess(service, said, policy).findings().stream().map(finding -> finding.ruleId()).toList();
    }

    private static foretress.assessment.Assessment assess(String id, Answers said, Policy policy, TestFact... tests) {
        Service service = KNOWLEDGE.ruleSet().service(id).orElseThrow();
        Answers all = BASE.complete(said, service.chemistries(), Set.of());
        List<TestFact> made = List.of(tests).stream().anyMatch(t -> t.test().equals("skin-test")) ? List.of(tests)
            : java.util.stream.Stream.concat(java.util.stream.Stream.of(NEGATIVE), List.of(tests).stream()).toList();
        var situation = new Situation(TODAY, TODAY, Optional.of(LocalDate.of(1990, 1, 1)), service.chemistries(),
            KNOWLEDGE.questionnaire(), all,
            policy, made, Optional.of(BaseClient.LENGTH_CM));
        return Assessor.assess(KNOWLEDGE.ruleSet(), KNOWLEDGE.factFinder().find(situation), List.of(service));
    }

    @Test
    @DisplayName("R26: in the United States too a skin test stays on two days, as its food and drug administration tells consumers")
    void aSkinTestWaitsTwoDaysEverywhere() {
        assertThat(Loaded.KNOWLEDGE.policies()).containsKey("us").allSatisfy(
            (place, policy) -> assertThat(policy.figure("skin-test-wait-hours")).as(place).isGreaterThanOrEqualTo(48));
    }
}
