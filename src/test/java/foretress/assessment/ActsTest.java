package foretress.assessment;

import static foretress.assessment.Weight.NOTE;
import static foretress.assessment.Weight.PREVENTS;
import static foretress.assessment.Weight.RESTRICTS;
import static foretress.assessment.Weight.TEST_FIRST;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Acts.Act;
import foretress.assessment.Acts.Kind;
import foretress.questionnaire.Question;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.Topic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("R35: what is not known is read by the act it asks for, each act once")
class ActsTest {
    private static final Questionnaire QUESTIONS = new Questionnaire(List.of(
        new Topic("reactions", List.of(question("rash"), question("tattoo"))),
        new Topic("medicines", List.of(question("tablets")))));

    private static Question question(String id) {
        return Told.choice(id, List.of("yes", "no"), Set.of(), Map.of());
    }

    private static Finding finding(String rule, Weight weight, boolean unknown, List<String> causes,
        String... demands) {
        return new Finding(rule, weight, Map.of("colour", weight), causes, List.of("fact"), List.of(demands),
            List.of("source"), unknown, List.of(), List.of());
    }

    private static Finding unknown(String rule, Weight weight, String cause, String... demands) {
        return finding(rule, weight, true, List.of(cause), demands);
    }

    private static Acts acts(Finding... findings) {
        return Acts.of(List.of(findings), Finding::weight, QUESTIONS);
    }

    @Test
    @DisplayName("findings of one topic that ask for no test are one question to put again, under the heaviest of their weights")
    void oneTopicIsOneQuestion() {
        Acts acts = acts(unknown("eczema", NOTE, "tablets"), unknown("steroid", TEST_FIRST, "tablets"),
            unknown("thinner", RESTRICTS, "tablets"));
        assertThat(acts.alone()).isEmpty();
        assertThat(acts.acts()).singleElement().satisfies(act -> {
            assertThat(act.kind()).isEqualTo(Kind.ASK);
            assertThat(act.id()).isEqualTo("medicines");
            assertThat(act.weight()).isEqualTo(TEST_FIRST);
            assertThat(act.findings()).extracting(Finding::ruleId).containsExactly("eczema", "steroid", "thinner");
        });
    }

    @Test
    @DisplayName("findings that ask for the same test are one test, whatever topic they come from; one that asks for two stands under its first")
    void oneTestIsOneAct() {
        Acts acts = acts(unknown("lotion", TEST_FIRST, "rash", "metal-test"),
            unknown("well", RESTRICTS, "tablets", "metal-test", "cutting"),
            unknown("henna", RESTRICTS, "tattoo", "cutting"), unknown("old-henna", NOTE, "tattoo", "cutting"));
        assertThat(acts.acts()).extracting(Act::id).containsExactly("metal-test", "cutting");
        assertThat(acts.acts()).extracting(act -> act.findings().size()).containsExactly(2, 2);
        assertThat(acts.acts()).extracting(Act::weight).containsExactly(TEST_FIRST, RESTRICTS);
    }

    @Test
    @DisplayName("what is known, what prevents, the only finding of its act and what no question asks about stand by themselves")
    void whatIsNeverGathered() {
        Acts acts = acts(finding("known", TEST_FIRST, false, List.of("rash")), unknown("prevents", PREVENTS, "rash"),
            unknown("only", NOTE, "rash"),
            unknown("recorded", NOTE, "not-asked"), unknown("recorded-too", NOTE, "not-asked"));
        assertThat(acts.acts()).isEmpty();
        assertThat(acts.alone()).extracting(Finding::ruleId).containsExactly("known", "prevents", "only", "recorded",
            "recorded-too");
    }

    @Test
    @DisplayName("a weight on the booked service counts, not the weight somewhere else")
    void theWeightOfTheBookedServiceCounts() {
        Acts acts = Acts.of(List.of(unknown("one", PREVENTS, "rash"), unknown("two", NOTE, "tattoo")),
            finding -> RESTRICTS, QUESTIONS);
        assertThat(acts.acts()).extracting(Act::weight).containsExactly(RESTRICTS);
    }

    @Test
    @DisplayName("nothing found is nothing to do")
    void nothingFound() {
        assertThat(acts()).isEqualTo(new Acts(List.of(), List.of()));
    }

    @Test
    @DisplayName("of any findings each is read exactly once, and the heaviest weight is still the heaviest")
    void nothingIsLostAndNothingLightened() {
        for (int seed = 0; seed < 500; seed++) {
            var random = new Random(seed);
            List<Finding> findings =
                IntStream.range(0, random.nextInt(30)).mapToObj(i -> someFinding("rule-" + i, random)).toList();
            Acts acts = Acts.of(findings, Finding::weight, QUESTIONS);
            List<Finding> read = new ArrayList<>(acts.alone());
            acts.acts().forEach(act -> read.addAll(act.findings()));
            assertThat(read).as("seed " + seed).containsExactlyInAnyOrderElementsOf(findings);
            assertThat(Weight.heaviest(Stream
                .concat(acts.acts().stream().map(Act::weight), acts.alone().stream().map(Finding::weight)).toList()))
                .as("seed " + seed).isEqualTo(Weight.heaviest(findings.stream().map(Finding::weight).toList()));
        }
    }

    private static Finding someFinding(String rule, Random random) {
        List<String> tests = List.of("skin-test", "metal-test", "cutting").subList(0, random.nextInt(4));
        return finding(rule, Weight.values()[1 + random.nextInt(5)], random.nextBoolean(),
            List.of(List.of("rash", "tattoo", "tablets", "not-asked").get(random.nextInt(4))),
            tests.toArray(String[]::new));
    }
}
