package foretress.assessment;

import static foretress.assessment.Weight.COULD_NOT_BE_ASSESSED;
import static foretress.assessment.Weight.NOTE;
import static foretress.assessment.Weight.PREVENTS;
import static foretress.assessment.Weight.RESTRICTS;
import static foretress.assessment.Weight.TEST_FIRST;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Condition.Compare;
import foretress.assessment.Condition.Op;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Who speaks: a rule about traces of metal beside one about metal that is suspected")
class VoicesTest {
    private static final FactDef METAL =
        new FactDef("metal", List.of("none", "trace", "suspected"), List.of(), Optional.empty());
    private static final FactDef SCALP = new FactDef("scalp", List.of("calm", "broken"), List.of(), Optional.empty());
    private static final Step LIGHTEN = new Step("lighten", Set.of("peroxide", "persulfate"));
    private static final Step TONE = new Step("tone", Set.of("oxidative-dye", "peroxide"));
    private static final Service HIGHLIGHTS = new Service("highlights", List.of(LIGHTEN, TONE));
    private static final Service GLOSS = new Service("gloss", List.of(TONE));

    private static final Condition ANY = new Compare("metal", Op.GREATER_OR_EQUAL, "trace", 1);
    private static final Condition TRACE = new Compare("metal", Op.EQUAL, "trace", 1);
    private static final Condition SUSPECTED = new Compare("metal", Op.GREATER_OR_EQUAL, "suspected", 2);
    private static final Condition BROKEN = new Compare("scalp", Op.EQUAL, "broken", 1);

    private static Rule rule(String id, Condition when, boolean lasting, Optional<Condition> speaks, String on,
        Weight weight) {
        return new Rule(id, when, Map.of(on, weight), Optional.empty(), List.of(), List.of("s"), lasting, false, 0,
            false, speaks);
    }

    private static Rule traces(Weight weight) {
        return rule("traces", ANY, false, Optional.of(TRACE), "peroxide", weight);
    }

    private static Rule suspected(Weight weight) {
        return rule("suspected", SUSPECTED, false, Optional.empty(), "peroxide", weight);
    }

    private static Facts metal(int best, int worst) {
        return Facts.of(List.of(FactValue.between(METAL, best, worst, List.of()),
            FactValue.known(SCALP, 1, List.of())));
    }

    private static Assessment assess(Facts facts, Rule... rules) {
        var set = new RuleSet(List.of(METAL, SCALP), KnownTreatments.NONE, List.of(rules), List.of(LIGHTEN, TONE),
            List.of(HIGHLIGHTS, GLOSS), List.of(), Map.of(), "0");
        return Assessor.assess(set, facts, List.of(HIGHLIGHTS, GLOSS));
    }

    private static List<String> spoken(Assessment found) {
        return found.spoken().stream().map(Finding::ruleId).toList();
    }

    @Test
    void whoseWordsAreNoLongerTrueIsSilentWhereAnotherSpeaksAndStillWeighs() {
        Assessment found = assess(metal(2, 2), traces(TEST_FIRST), suspected(TEST_FIRST));
        assertThat(spoken(found)).containsExactly("suspected");
        assertThat(found.on(HIGHLIGHTS)).extracting(Finding::ruleId).containsExactlyInAnyOrder("traces", "suspected");
        assertThat(found.spokenOn(HIGHLIGHTS)).extracting(Finding::ruleId).containsExactly("suspected");
        assertThat(found.finding("traces").orElseThrow().silentOn()).containsExactlyInAnyOrder("lighten", "tone");
        assertThat(found.finding("traces").orElseThrow().weight()).isEqualTo(TEST_FIRST);
        assertThat(found.finding("traces").orElseThrow().speaks()).isFalse();
    }

    @Test
    void whoseWordsAreTrueSpeaksAndOfWhatIsNotSureTheHeavierSpeaks() {
        assertThat(spoken(assess(metal(1, 1), traces(TEST_FIRST), suspected(TEST_FIRST)))).containsExactly("traces");
        assertThat(spoken(assess(metal(1, 2), traces(TEST_FIRST), suspected(TEST_FIRST)))).containsExactly("suspected");
    }

    @Test
    void noWeightStandsWithoutWords() {
        assertThat(spoken(assess(metal(2, 2), traces(TEST_FIRST), suspected(RESTRICTS))))
            .as("a lighter one does not speak for it").containsExactlyInAnyOrder("traces", "suspected");
        assertThat(spoken(assess(metal(2, 2), traces(RESTRICTS), suspected(TEST_FIRST)))).containsExactly("suspected");
        assertThat(spoken(assess(metal(2, 2), traces(NOTE)))).as("nobody else speaks").containsExactly("traces");
    }

    @Test
    void silentOnlyOnTheStepOnWhichTheOtherSpeaks() {
        Assessment found = assess(metal(2, 2), traces(NOTE),
            rule("suspected", SUSPECTED, false, Optional.empty(), "persulfate", PREVENTS));
        Finding traces = found.finding("traces").orElseThrow();
        assertThat(traces.silentOn()).containsExactly("lighten");
        assertThat(traces.speaksOn(LIGHTEN)).isFalse();
        assertThat(traces.speaksOn(TONE)).isTrue();
        assertThat(traces.speaks()).isTrue();
        assertThat(found.spokenOn(GLOSS)).extracting(Finding::ruleId).containsExactly("traces");
        assertThat(found.finding("suspected").orElseThrow().speaksOn(TONE)).as("it does not touch it").isFalse();
    }

    @Test
    void ofAnotherFactNobodySpeaksForIt() {
        Rule broken = rule("broken", BROKEN, false, Optional.empty(), "peroxide", PREVENTS);
        assertThat(spoken(assess(metal(2, 2), traces(NOTE), broken))).containsExactlyInAnyOrder("broken", "traces");
    }

    @Test
    void whatItsWordsReadIsWhatItIsAboutToo() {
        Rule sore = rule("sore", BROKEN, false, Optional.of(new Compare("metal", Op.EQUAL, "none", 0)), "peroxide",
            NOTE);
        assertThat(spoken(assess(metal(2, 2), sore, suspected(NOTE)))).containsExactly("suspected");
        assertThat(spoken(assess(metal(0, 0), sore, suspected(NOTE)))).containsExactly("sore");
    }

    @Test
    void forAFinalOneOnlyAFinalOneSpeaks() {
        Rule traces = rule("traces", ANY, true, Optional.of(TRACE), "peroxide", TEST_FIRST);
        assertThat(spoken(assess(metal(2, 2), traces, suspected(TEST_FIRST)))).contains("traces");
        assertThat(spoken(assess(metal(2, 2), traces,
            rule("suspected", SUSPECTED, true, Optional.empty(), "peroxide", TEST_FIRST))))
            .containsExactly("suspected");
    }

    @Test
    void ofTwoWhoseWordsAreNotSureTheHeavierSpeaksWhicheverStandsFirst() {
        Rule lighter = rule("lighter", ANY, false, Optional.of(TRACE), "peroxide", NOTE);
        assertThat(spoken(assess(metal(2, 2), lighter, traces(TEST_FIRST)))).containsExactly("traces");
        assertThat(spoken(assess(metal(2, 2), traces(TEST_FIRST), lighter))).containsExactly("traces");
    }

    @Test
    void whatDoesNotTouchAStepIsNotHeardThere() {
        Rule lighter = rule("lighter", ANY, false, Optional.of(TRACE), "persulfate", NOTE);
        Assessment found = assess(metal(2, 2), lighter, traces(TEST_FIRST), suspected(RESTRICTS));
        assertThat(found.finding("lighter").orElseThrow().silentOn()).containsExactly("lighten");
        assertThat(spoken(found)).containsExactlyInAnyOrder("traces", "suspected");
    }

    @Test
    void whatCouldNotBeAssessedSpeaksOfThatAndOfAFactNobodyFoundNothingIsSure() {
        Condition missing = new Compare("no such fact", Op.EQUAL, "x", 0);
        Assessment failed = assess(metal(2, 2),
            rule("failed", missing, false, Optional.of(TRACE), "peroxide", NOTE), suspected(PREVENTS));
        assertThat(spoken(failed)).containsExactly("suspected", "failed");
        assertThat(failed.finding("failed").orElseThrow().weight()).isEqualTo(COULD_NOT_BE_ASSESSED);
        assertThat(spoken(assess(metal(2, 2), rule("traces", ANY, false, Optional.of(missing), "peroxide", NOTE),
            suspected(NOTE)))).containsExactly("suspected");
    }
}
