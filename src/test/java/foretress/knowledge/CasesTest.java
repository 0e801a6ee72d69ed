package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import foretress.assessment.Assessment;
import foretress.assessment.Rule;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The cases beside the rules: each says what one client's answers must come to. */
@Execution(ExecutionMode.CONCURRENT)
class CasesTest {
    private static final Path FOLDER = Path.of("src/test/cases");
    private static final int CASES_A_RULE = 3;

    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Complaints COMPLAINTS = new Complaints();
    private static final List<Case> CASES = cases();

    private static List<Case> cases() {
        var reader = new CaseReader(KNOWLEDGE);
        List<Case> read = new ArrayList<>();
        KnowledgeFiles.ofFolder(FOLDER).byPath().forEach((path, text) -> Yaml.read(path, text, COMPLAINTS)
            .ifPresent(file -> file.trying(f -> read.addAll(reader.read(path, f)))));
        return read;
    }

    @Test
    void theCasesCanBeRead() {
        assertThat(COMPLAINTS.all()).as("faults in " + FOLDER).isEmpty();
    }

    @TestFactory
    Stream<DynamicNode> everyCaseComesOutAsItSays() {
        return CASES.stream().collect(Collectors.groupingBy(Case::file)).entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(file -> dynamicContainer(file.getKey(),
                file.getValue().stream().map(c -> dynamicTest(c.name(), () -> holds(c)))));
    }

    @Test
    void everyRuleHasThreeCasesThatNameIt() {
        Map<String, Long> named = CASES.stream()
            .flatMap(c -> Stream.of(c.findings(), c.not(), List.copyOf(c.weights().keySet())).flatMap(List::stream)
                .distinct())
            .collect(Collectors.groupingBy(id -> id, Collectors.counting()));
        List<String> few = KNOWLEDGE.ruleSet().rules().stream().map(Rule::id)
            .filter(id -> named.getOrDefault(id, 0L) < CASES_A_RULE).toList();
        assertThat(few).as("rules with fewer than three cases").isEmpty();
    }

    @Test
    void everyRuleFiresInOneCaseAndKeepsStillInAnother() {
        List<String> ids = KNOWLEDGE.ruleSet().rules().stream().map(Rule::id).toList();
        assertThat(CASES.stream().flatMap(c -> c.findings().stream())).as("rules seen to fire").containsAll(ids);
        assertThat(CASES.stream().flatMap(c -> c.not().stream())).as("rules seen not to fire").containsAll(ids);
    }

    private void holds(Case c) {
        Assessment assessment = c.assess(KNOWLEDGE);
        assertThat(c.faults(assessment)).as(told(c, assessment)).isEmpty();
    }

    @Test
    void aCaseThatDoesNotHoldSaysEverythingThatIsOtherwise() {
        Case planted = Case.read(KNOWLEDGE, Map.of("planted.yaml", """
            - name: nothing was ever done and everything is expected
              given: { service: highlights }
              expect: { standing: prevents, findings: [metal-meets-peroxide], demands: [incompatibility-test],
                        weights: { metal-test-positive: prevents }, standings: { relaxer: prevents } }
            """)).get(0);
        assertThat(planted.faults(planted.assess(KNOWLEDGE))).hasSize(5).allMatch(fault -> fault.contains(" must be "));
        Case other = Case.read(KNOWLEDGE, Map.of("planted.yaml", """
            - name: a lotion that must not be found
              given: { service: highlights, darkening-lotion: yes }
              expect: { not: [metal-meets-peroxide] }
            """)).get(0);
        assertThat(other.faults(other.assess(KNOWLEDGE)))
            .containsExactly("metal-meets-peroxide must not be found and is");
    }

    @Test
    void aCaseThatCannotBeReadIsRefusedWithItsPlace() {
        assertThatExceptionOfType(KnowledgeException.class).isThrownBy(() -> Case.read(KNOWLEDGE, Map.of("planted.yaml", """
            - name: a day that never was, and words nobody knows
              given: { service: highlights, today: 2026-02-30 }
              expect: {}
            - name: a treatment somewhere
              given: { service: highlights, treatments: [{ what: restorer, when: 2024-13 }] }
              expect: {}
            - name: a test that came to something else
              given: { service: highlights, tests: [{ test: skin-test, outcome: fine }] }
              expect: {}
            """))).satisfies(
            e -> assertThat(e.complaints()).hasSize(3).allMatch(c -> c.headline().startsWith("planted.yaml:")));
    }

    private static String told(Case c, Assessment assessment) {
        String findings = assessment.on(c.service()).stream()
            .map(f -> "  %s: %s, by %s, for %s%s".formatted(f.ruleId(), f.on(c.service()).code(), f.causes(),
                f.facts().stream().map(fact -> assessment.facts().byId().get(fact)).toList(),
                f.onlyIfUnknown() ? " (not known)" : ""))
            .collect(Collectors.joining("\n"));
        return "%s: %s\n%s\n%s\n".formatted(c.file(), c.name(), assessment.standing(c.service().id()).orElseThrow(),
            findings);
    }
}
