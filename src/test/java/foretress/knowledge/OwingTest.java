package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactFinder;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import foretress.plan.Owing;
import foretress.questionnaire.Answers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@DisplayName("Which tests are owed: only those that can change something")
@Execution(ExecutionMode.CONCURRENT)
class OwingTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final FactFinder FACTS = KNOWLEDGE.factFinder();
    private static final List<Case> CASES = cases();

    private static List<Case> cases() {
        Map<String, String> files = KnowledgeFiles.ofFolder(Path.of("src/test/cases")).byPath();
        return Case.read(KNOWLEDGE, files);
    }

    private static Owing owing(String given) {
        Case one =
            Case.read(KNOWLEDGE, Map.of("one.yaml", "- name: one\n  given: " + given + "\n  expect: {}\n")).get(0);
        return owing(one.situation(), one.service());
    }

    private static Owing owing(Situation situation, Service service) {
        Situation hoped = situation.saying(KNOWLEDGE.answeredWell(situation.answers(), service.chemistries()));
        return Owing.of(KNOWLEDGE.ruleSet(), FACTS::find, situation, hoped, List.of(service));
    }

    private static Assessment assess(Situation situation, Service service) {
        return Assessor.assess(KNOWLEDGE.ruleSet(), FACTS.find(situation), List.of(service));
    }

    private static Set<String> demanded(Assessment assessment, Service service) {
        Set<String> demanded = new HashSet<>();
        assessment.on(service).forEach(finding -> demanded.addAll(finding.demands()));
        return demanded;
    }

    @Test
    @DisplayName("R13: a first colour owes its skin test; a valid one on file owes none")
    void aFirstColour() {
        assertThat(owing("{ service: colour-whole }").tests()).containsExactly("skin-test");
        assertThat(owing("{ service: colour-whole, tests: [{ test: skin-test, outcome: negative }] }").tests())
            .doesNotContain("skin-test");
    }

    @Test
    @DisplayName("R13: a skin test that the finding beside it says proves nothing is not booked: it waits")
    void aMaskedSkinTestWaits() {
        Owing masked = owing("{ service: colour-whole, medicines: [{ name: methotrexate }] }");
        assertThat(masked.tests()).doesNotContain("skin-test");
        assertThat(masked.waiting()).containsExactly("skin-test");
        assertThat(masked.tests()).as("R37: what it waits for is asked for").contains("medical-advice");
    }

    @Test
    @DisplayName("R13: what nobody has answered yet makes no test useless")
    void anAnswerStillToComeMakesNoTestUseless() {
        Case one =
            Case.read(KNOWLEDGE, Map.of("one.yaml", "- name: one\n  given: { service: colour-whole }\n  expect: {}\n"))
                .get(0);
        Answers half = one.situation().answers().without("medicines");
        assertThat(owing(one.situation().saying(half), one.service()).tests()).contains("skin-test");
    }

    @Test
    @DisplayName("R13: a service that nothing can open owes no test, not even the check while it develops")
    void aPreventedServiceOwesNothing() {
        Owing reactor = owing(
            "{ service: highlights, darkening-lotion: yes, tests: [{ test: incompatibility-test, outcome: positive }] }");
        assertThat(reactor.tests()).isEmpty();
        assertThat(reactor.waiting()).isEmpty();
    }

    @Test
    @DisplayName("R13: a finding that asks for a reading on day 3 is heard by the plan")
    void readAgainOnDayThree() {
        assertThat(
            owing("{ service: colour-whole, elsewhere-reaction: [clothing-dye], elsewhere-reaction-when: 2025-06 }")
                .readAgainDays())
            .isEqualTo(3);
        assertThat(owing("{ service: colour-whole }").readAgainDays()).isZero();
    }

    @Test
    @DisplayName("R13: the words ask for a reading on day 3 exactly where the rule does")
    void wordsAndRulesAskForTheSameReading() {
        Words words = KNOWLEDGE.words("en");
        assertThat(KNOWLEDGE.ruleSet().rules())
            .allSatisfy(rule -> assertThat(words.finding(rule.id()).do_().contains("day 3")).as(rule.id())
                .isEqualTo(rule.readAgainDays() == 3));
    }

    @Test
    @DisplayName("R13: in every case whatever is demanded is owed, waits, or belongs to a service that is off; and nothing else is owed")
    void nothingIsLostAndNothingIsAdded() {
        int owed = 0;
        for (Case one : CASES) {
            Owing owing = owing(one.situation(), one.service());
            Assessment now = assess(one.situation(), one.service());
            Set<String> said = new HashSet<>(owing.tests());
            said.addAll(owing.waiting());
            boolean off = now.standings().get(0).weight() == Weight.PREVENTS;
            assertThat(demanded(now, one.service())).as(one.name()).containsAll(said);
            assertThat(off || said.containsAll(demanded(now, one.service()))).as(one.name()).isTrue();
            owed += owing.tests().size();
        }
        assertThat(owed).isGreaterThan(100);
    }

    @Test
    @DisplayName("R13: in every case each owed test that has an outcome takes its own demand away when it comes out well")
    void everyOwedTestCanChangeSomething() {
        for (Case one : CASES) {
            Owing owing = owing(one.situation(), one.service());
            Set<String> open = new HashSet<>(owing.tests());
            Situation well = one.situation();
            for (int round = 0; round < 4; round++) {
                well = well.tested(sound(owing(well, one.service()).tests(), well));
            }
            Set<String> still = new HashSet<>(owing(well, one.service()).tests());
            open.retainAll(still);
            open.removeIf(test -> !TestFact.OUTCOMES.containsKey(test));
            assertThat(open).as(one.file() + ": " + one.name()).isEmpty();
        }
    }

    private static List<TestFact> sound(List<String> tests, Situation known) {
        List<TestFact> made = new ArrayList<>();
        for (String test : tests) {
            if (test.equals("medical-advice")) {
                KNOWLEDGE.ruleSet().facts().stream().flatMap(def -> def.computation().stream())
                    .filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE)
                    .flatMap(how -> how.of().stream()).forEach(
                        about -> made.add(TestFact.advice(about, "with-care", known.today().plusDays(1), true, false)));
            } else if (TestFact.OUTCOMES.containsKey(test)) {
                made.add(TestFact.sound(test, TestFact.OUTCOMES.get(test).get(0), known.today().plusDays(1),
                    known.today().plusDays(1)));
            }
        }
        return made;
    }

    @Test
    @DisplayName("R4: what is owed at least is owed, or outweighed, whatever is answered")
    void whatIsOwedAtLeastIsOwedByEverybody() {
        int held = 0;
        for (int number = 0; number < 600; number++) {
            WholeClient client = new RandomClients(number).client();
            Situation said = situation(client, client.answers());
            Situation silent = situation(client, KNOWLEDGE.answeredWell(Answers.NONE, client.service().chemistries()));
            Owing least = owing(silent, client.service());
            Owing owing = owing(said, client.service());
            Weight standing = assess(said, client.service()).standings().get(0).weight();
            for (String test : least.tests()) {
                boolean kept = owing.tests().contains(test) || owing.waiting().contains(test)
                    || standing.atLeast(Weight.TEST_FIRST);
                assertThat(kept).as("%s at least, for %s", test, client).isTrue();
                held++;
            }
        }
        assertThat(held).isGreaterThan(50);
    }

    @Test
    @DisplayName("R4: every service that touches the skin with a dye owes its skin test before anybody has answered")
    void everyDyeOwesItsSkinTestAtLeast() {
        for (Service service : KNOWLEDGE.ruleSet().services()) {
            boolean dye = KNOWLEDGE.chemistries().needSkinTest(service.chemistries());
            var client = new WholeClient(service, Answers.NONE, List.of(), false, Optional.empty());
            Owing least =
                owing(situation(client, KNOWLEDGE.answeredWell(Answers.NONE, service.chemistries())), service);
            assertThat(least.tests().contains("skin-test")).as(service.id()).isEqualTo(dye);
        }
    }

    private static Situation situation(WholeClient client, Answers answers) {
        return new Situation(RandomClients.TODAY, RandomClients.TODAY, client.born(), client.service().chemistries(),
            KNOWLEDGE.questionnaire(), answers,
            KNOWLEDGE.policy("uk"), client.tests(), Optional.empty());
    }

    @Test
    @DisplayName("R28: with G6PD deficiency the plant powder's skin test waits for the doctor's word, and is owed after a yes")
    void aPlantPowderWaitsForTheWordOnG6pd() {
        Owing unasked = owing("{ service: plant-colour, g6pd: yes }");
        assertThat(unasked.tests()).contains("medical-advice").doesNotContain("skin-test");
        assertThat(unasked.waiting()).contains("skin-test");
        assertThat(owing("{ service: plant-colour, g6pd: yes, tests: "
            + "[{ test: medical-advice, about: g6pd, outcome: with-care }] }").tests()).contains("skin-test");
        assertThat(owing("{ service: plant-colour, g6pd: dont-know }").tests()).contains("skin-test");
        assertThat(owing("{ service: colour-whole, g6pd: yes }").tests()).as("a dye waits for nobody")
            .contains("skin-test");
    }
}
