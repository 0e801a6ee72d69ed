package foretress.assessment;

import static foretress.assessment.Weight.COULD_NOT_BE_ASSESSED;
import static foretress.assessment.Weight.NOTE;
import static foretress.assessment.Weight.NOTHING_FOUND;
import static foretress.assessment.Weight.PREVENTS;
import static foretress.assessment.Weight.RESTRICTS;
import static foretress.assessment.Weight.TEST_FIRST;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Condition.Compare;
import foretress.assessment.Condition.Op;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AssessorTest {
    private static final FactDef METAL =
        new FactDef("metal", List.of("none", "trace", "suspected"), List.of(), Optional.empty());
    private static final FactDef SCALP = new FactDef("scalp", List.of("calm", "broken"), List.of(), Optional.empty());
    private static final Step LIGHTEN = new Step("lighten", Set.of("peroxide", "persulfate"));
    private static final Step TONE = new Step("tone", Set.of("oxidative-dye", "peroxide"));
    private static final Step CUT = new Step("cut", Set.of("none"));
    private static final Service HIGHLIGHTS = new Service("highlights", List.of(LIGHTEN, TONE));
    private static final Service TRIM = new Service("trim", List.of(CUT));

    private static final Condition SUSPECTED = new Compare("metal", Op.GREATER_OR_EQUAL, "suspected", 2);
    private static final Condition BROKEN = new Compare("scalp", Op.EQUAL, "broken", 1);

    private static final Facts WELL =
        Facts.of(List.of(FactValue.known(METAL, 0, List.of()), FactValue.known(SCALP, 0, List.of())));

    @Test
    void theHeaviestStepDecides() {
        Rule rule = rule("metal", SUSPECTED, Map.of("persulfate", TEST_FIRST, "oxidative-dye", NOTE));
        Assessment found = assess(WELL.with(FactValue.known(METAL, 2, List.of("lotion"))), rule);
        assertThat(standing(found, HIGHLIGHTS))
            .isEqualTo(new Standing("highlights", TEST_FIRST, List.of("metal"), 0, 0));
        assertThat(found.finding("metal").orElseThrow().byStep())
            .isEqualTo(Map.of("lighten", TEST_FIRST, "tone", NOTE));
        assertThat(found.finding("metal").orElseThrow().causes()).containsExactly("lotion");
    }

    @Test
    void aStepTakenOutByNameTakesItsWeightWithIt() {
        Rule rule = rule("dye", BROKEN, Map.of("oxidative-dye", PREVENTS));
        Facts facts = WELL.with(FactValue.known(SCALP, 1, List.of()));
        Service withoutToner = HIGHLIGHTS.keeping(List.of("lighten"));
        assertThat(assess(facts, rule).standings()).extracting(Standing::weight).containsExactly(PREVENTS,
            NOTHING_FOUND);
        assertThat(Assessor.assess(rules(rule), facts, List.of(withoutToner)).standings().get(0).weight())
            .isEqualTo(NOTHING_FOUND);
    }

    @Test
    void aStepCanBeWeighedByNameAsWellAsByItsChemistry() {
        Rule rule = rule("step", BROKEN, Map.of("peroxide", NOTE, "lighten", RESTRICTS));
        Finding finding = assess(WELL.with(FactValue.known(SCALP, 1, List.of())), rule).findings().get(0);
        assertThat(finding.byStep()).isEqualTo(Map.of("lighten", RESTRICTS, "tone", NOTE));
    }

    @Test
    void whatIsNotKnownWeighsAsAYes() {
        Rule rule = rule("metal", SUSPECTED, Map.of("peroxide", TEST_FIRST));
        Assessment found = assess(WELL.with(FactValue.unknown(METAL, List.of("lotion"))), rule);
        assertThat(standing(found, HIGHLIGHTS).weight()).isEqualTo(TEST_FIRST);
        assertThat(found.findings().get(0).onlyIfUnknown()).isTrue();
    }

    @Test
    void aLighterWeightForTheUnknownHoldsOnlyWhileItIsUnknown() {
        var rule = new Rule("metal", SUSPECTED, Map.of("peroxide", TEST_FIRST), Optional.of(NOTE), List.of(),
            List.of("s"), false, false);
        assertThat(standing(assess(WELL.with(FactValue.unknown(METAL, List.of())), rule), HIGHLIGHTS).weight())
            .isEqualTo(NOTE);
        assertThat(standing(assess(WELL.with(FactValue.known(METAL, 2, List.of())), rule), HIGHLIGHTS).weight())
            .isEqualTo(TEST_FIRST);
        assertThat(standing(assess(WELL.with(FactValue.between(METAL, 0, 1, List.of())), rule), HIGHLIGHTS).weight())
            .isEqualTo(NOTHING_FOUND);
    }

    @ParameterizedTest
    @EnumSource(names = { "NOTE", "RESTRICTS", "TEST_FIRST" })
    void whatPreventsNeverWeighsLessThanRestrictsWhenNotKnown(Weight lighter) {
        var rule = new Rule("metal", SUSPECTED, Map.of("peroxide", PREVENTS), Optional.of(lighter), List.of(),
            List.of("s"), false, false);
        assertThat(standing(assess(WELL.with(FactValue.unknown(METAL, List.of())), rule), HIGHLIGHTS).weight())
            .isEqualTo(lighter.heavier(RESTRICTS));
    }

    @Test
    void aRuleThatFailsIsAFindingAndNeverNothing() {
        Condition failing = new Compare("no such fact", Op.EQUAL, "x", 0);
        Assessment found = assess(WELL, rule("fails", failing, Map.of("peroxide", NOTE)));
        assertThat(standing(found, HIGHLIGHTS))
            .isEqualTo(new Standing("highlights", COULD_NOT_BE_ASSESSED, List.of("fails"), 0, 0));
        assertThat(standing(found, TRIM).weight()).isEqualTo(NOTHING_FOUND);
    }

    /** Even where another part of the condition settles it: nobody has looked at the whole. */
    @Test
    void aFactThatCouldNotBeFoundCannotBeAssessed() {
        Condition both = new Condition.And(List.of(BROKEN, SUSPECTED));
        Assessment found = assess(WELL.with(FactValue.faulty(METAL, "a date was not read")),
            rule("both", both, Map.of("peroxide", RESTRICTS)));
        assertThat(standing(found, HIGHLIGHTS).weight()).isEqualTo(COULD_NOT_BE_ASSESSED);
    }

    @Test
    void aFailureIsLighterThanWhatPrevents() {
        Rule fails = rule("fails", new Compare("no such fact", Op.EQUAL, "x", 0), Map.of("peroxide", NOTE));
        Rule prevents = rule("prevents", BROKEN, Map.of("peroxide", PREVENTS));
        Assessment found = assess(WELL.with(FactValue.known(SCALP, 1, List.of())), fails, prevents);
        assertThat(standing(found, HIGHLIGHTS))
            .isEqualTo(new Standing("highlights", PREVENTS, List.of("prevents"), 0, 0));
        assertThat(found.findings()).extracting(Finding::weight).containsExactly(PREVENTS, COULD_NOT_BE_ASSESSED);
    }

    @Test
    void aQuestionNotYetAskedIsCountedAndIsNotNothingFound() {
        var question = new NotAsked("lotion", List.of(Set.of("peroxide", "thio")));
        var notAsked = new FactValue("metal", METAL.classes(), 0, 2, 0, List.of("lotion"), List.of(question),
            List.of(), List.of(), Optional.empty());
        Assessment found = assess(WELL.with(notAsked), rule("metal", SUSPECTED, Map.of("peroxide", TEST_FIRST)));
        assertThat(standing(found, HIGHLIGHTS)).isEqualTo(new Standing("highlights", NOTHING_FOUND, List.of(), 1, 0));
        assertThat(standing(found, HIGHLIGHTS).nothingFound()).isFalse();
        assertThat(standing(found, TRIM).nothingFound()).isTrue();
        assertThat(found.findings()).isEmpty();
    }

    /** Nobody would ever ask it for this service, so waiting for it would hide the finding for good. */
    @Test
    void aQuestionThatTheServiceWouldNotAskEitherCountsAsAYes() {
        var question = new NotAsked("lotion", List.of(Set.of("thio")));
        var notAsked = new FactValue("metal", METAL.classes(), 0, 2, 0, List.of(), List.of(question), List.of(),
            List.of(), Optional.empty());
        Assessment found = assess(WELL.with(notAsked), rule("metal", SUSPECTED, Map.of("peroxide", TEST_FIRST)));
        assertThat(standing(found, HIGHLIGHTS).weight()).isEqualTo(TEST_FIRST);
    }

    @Test
    void somethingElseUnknownIsNotExcusedByAQuestionNotYetAsked() {
        var question = new NotAsked("lotion", List.of(Set.of("peroxide")));
        var notAsked = new FactValue("metal", METAL.classes(), 0, 2, 0, List.of(), List.of(question), List.of(),
            List.of(), Optional.empty());
        Condition either = new Condition.Or(List.of(SUSPECTED, BROKEN));
        Facts facts = WELL.with(notAsked).with(FactValue.unknown(SCALP, List.of("scalp-today")));
        assertThat(standing(assess(facts, rule("either", either, Map.of("peroxide", TEST_FIRST))), HIGHLIGHTS).weight())
            .isEqualTo(TEST_FIRST);
    }

    @Test
    void aRequiredAnswerThatIsMissingIsNeverNothingFound() {
        var unanswered = new FactValue("scalp", SCALP.classes(), 0, 1, 1, List.of("scalp-today"), List.of(),
            List.of("scalp-today"), List.of(), Optional.empty());
        Rule other = rule("never fires", new Condition.And(List.of(BROKEN, SUSPECTED)), Map.of("peroxide", NOTE));
        Standing standing = standing(assess(WELL.with(unanswered), other), HIGHLIGHTS);
        assertThat(standing).isEqualTo(new Standing("highlights", NOTHING_FOUND, List.of(), 0, 1));
        assertThat(standing.nothingFound()).isFalse();
    }

    @Test
    @DisplayName("R18: a finding carries the words that decided its facts, and of no other fact")
    void whatWasReadStandsWithTheFindingItDecided() {
        var lead = new ReadAs("plumbi acetas", List.of("LEAD ACETATE"), true);
        var other = new ReadAs("aqua", List.of("AQUA"), true);
        Facts facts = WELL.with(FactValue.known(METAL, 2, List.of("label")).reading(List.of(lead)))
            .with(FactValue.known(SCALP, 1, List.of()).reading(List.of(other)));
        assertThat(assess(facts, rule("metal", SUSPECTED, Map.of("peroxide", NOTE))).findings().get(0).read())
            .containsExactly(lead);
        FactValue trace = FactValue.known(METAL, 1, List.of("earlier label")).reading(List.of(other));
        assertThat(facts.get("metal").heavier(trace).read()).containsExactly(lead);
        assertThat(trace.heavier(facts.get("metal")).read()).containsExactly(lead);
    }

    @Test
    void onlyTheFactsThatDecidedAreGivenAsReasons() {
        Condition either = new Condition.Or(List.of(SUSPECTED, BROKEN));
        Facts facts = Facts.of(
            List.of(FactValue.known(METAL, 0, List.of("lotion")), FactValue.known(SCALP, 1, List.of("scalp-today"))));
        Finding finding = assess(facts, rule("either", either, Map.of("peroxide", NOTE))).findings().get(0);
        assertThat(finding.causes()).containsExactly("scalp-today");
        assertThat(finding.facts()).containsExactly("scalp");
    }

    @Test
    void rulesOfOneWeightDecideTogetherAndALighterOneNever() {
        Rule metal = rule("metal", SUSPECTED, Map.of("peroxide", TEST_FIRST));
        Rule scalp = rule("scalp", BROKEN, Map.of("peroxide", TEST_FIRST));
        Rule note = rule("note", BROKEN, Map.of("peroxide", NOTE));
        Facts facts = Facts.of(List.of(FactValue.known(METAL, 2, List.of()), FactValue.known(SCALP, 1, List.of())));
        assertThat(standing(assess(facts, metal, scalp, note), HIGHLIGHTS).deciding()).containsExactly("metal",
            "scalp");
        assertThat(standing(assess(facts, note, scalp, metal), HIGHLIGHTS).deciding()).containsExactly("scalp",
            "metal");
        assertThat(standing(assess(WELL, metal, scalp, note), HIGHLIGHTS).deciding()).isEmpty();
    }

    /** Cutting would put this question too, but nothing it could bring to light weighs on a cut. */
    @Test
    void aQuestionNotYetAskedIsCountedOnlyWhereItsRuleWeighs() {
        var question = new NotAsked("lotion", List.of(Set.of("peroxide", "none")));
        var notAsked = new FactValue("metal", METAL.classes(), 0, 2, 0, List.of(), List.of(question), List.of(),
            List.of(), Optional.empty());
        Assessment found = assess(WELL.with(notAsked), rule("metal", SUSPECTED, Map.of("peroxide", TEST_FIRST)));
        assertThat(standing(found, TRIM)).isEqualTo(new Standing("trim", NOTHING_FOUND, List.of(), 0, 0));
        assertThat(standing(found, HIGHLIGHTS)).isEqualTo(new Standing("highlights", NOTHING_FOUND, List.of(), 1, 0));
    }

    @Test
    void anAssessmentFindsWhatItFoundAndNothingElse() {
        Facts facts = WELL.with(FactValue.known(SCALP, 1, List.of()));
        Assessment found = assess(facts, rule("scalp", BROKEN, Map.of("peroxide", NOTE)),
            rule("cut", BROKEN, Map.of("none", RESTRICTS)));
        assertThat(found.finding("scalp").orElseThrow().ruleId()).isEqualTo("scalp");
        assertThat(found.finding("cut").orElseThrow().ruleId()).isEqualTo("cut");
        assertThat(found.finding("metal")).isEmpty();
        assertThat(found.on(TRIM)).extracting(Finding::ruleId).containsExactly("cut");
    }

    @Test
    void weightsAreWrittenAsInTheData() {
        assertThat(Arrays.stream(Weight.values()).map(Weight::code)).containsExactly("nothing found", "note",
            "restricts", "test first",
            "could not be assessed", "prevents");
        assertThat(Arrays.stream(Weight.values())).allSatisfy(w -> assertThat(Weight.ofCode(w.code())).isEqualTo(w));
    }

    private static Standing standing(Assessment assessment, Service service) {
        return assessment.standing(service.id()).orElseThrow();
    }

    private static Assessment assess(Facts facts, Rule... rules) {
        return Assessor.assess(rules(rules), facts, List.of(HIGHLIGHTS, TRIM));
    }

    private static RuleSet rules(Rule... rules) {
        return new RuleSet(List.of(METAL, SCALP), KnownTreatments.NONE, List.of(rules), List.of(LIGHTEN, TONE, CUT),
            List.of(HIGHLIGHTS, TRIM), List.of(),
            Map.of(), "0");
    }

    private static Rule rule(String id, Condition when, Map<String, Weight> weights) {
        return new Rule(id, when, weights, Optional.empty(), List.of(), List.of("s"), false, false);
    }
}
