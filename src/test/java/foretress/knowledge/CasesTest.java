package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The cases beside the rules: each says what one client's answers must come to. */
class CasesTest {
    private static final Path FOLDER = Path.of("src/test/cases");
    private static final int CASES_A_RULE = 3;

    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final Complaints COMPLAINTS = new Complaints();
    private static final List<Case> CASES = cases();

    private static List<Case> cases() {
        CaseReader reader = new CaseReader(KNOWLEDGE);
        List<Case> read = new ArrayList<>();
        KnowledgeFiles.ofFolder(FOLDER).byPath().forEach((path, text) ->
            Yaml.read(path, text, COMPLAINTS).ifPresent(file -> file.trying(f -> read.addAll(reader.read(path, f)))));
        return read;
    }

    @Test
    void theCasesCanBeRead() {
        assertThat(COMPLAINTS.all()).as("faults in " + FOLDER).isEmpty();
    }

    @TestFactory
    Stream<DynamicNode> everyCaseComesOutAsItSays() {
        return CASES.stream().collect(Collectors.groupingBy(Case::file)).entrySet().stream().sorted(Map.Entry.comparingByKey())
            .map(file -> dynamicContainer(file.getKey(), file.getValue().stream().map(c -> dynamicTest(c.name(), () -> holds(c)))));
    }

    @Test
    void everyRuleHasThreeCasesThatNameIt() {
        Map<String, Long> named = CASES.stream()
            .flatMap(c -> Stream.of(c.findings(), c.not(), List.copyOf(c.weights().keySet())).flatMap(List::stream).distinct())
            .collect(Collectors.groupingBy(id -> id, Collectors.counting()));
        List<String> few = KNOWLEDGE.ruleSet().rules().stream().map(Rule::id).filter(id -> named.getOrDefault(id, 0L) < CASES_A_RULE).toList();
        assertThat(few).as("rules with fewer than three cases").isEmpty();
    }

    @Test
    void everyRuleFiresInOneCaseAndKeepsStillInAnother() {
        List<String> ids = KNOWLEDGE.ruleSet().rules().stream().map(Rule::id).toList();
        assertThat(CASES.stream().flatMap(c -> c.findings().stream())).as("rules seen to fire").containsAll(ids);
        assertThat(CASES.stream().flatMap(c -> c.not().stream())).as("rules seen not to fire").containsAll(ids);
    }

    private void holds(Case c) {
        Facts facts = KNOWLEDGE.factFinder().find(c.situation());
        List<Service> offered = new ArrayList<>(List.of(c.service()));
        KNOWLEDGE.ruleSet().services().stream().filter(s -> !s.id().equals(c.service().id())).forEach(offered::add);
        Assessment assessment = Assessor.assess(KNOWLEDGE.ruleSet(), facts, offered);
        String told = told(c, assessment);
        Map<String, Finding> on = assessment.on(c.service()).stream().collect(Collectors.toMap(Finding::ruleId, f -> f));
        c.standing().ifPresent(weight ->
            assertThat(assessment.standing(c.service().id()).orElseThrow().weight()).as(told).isEqualTo(weight));
        assertThat(on.keySet()).as(told).containsAll(c.findings());
        assertThat(c.not().stream().filter(on::containsKey)).as(told).isEmpty();
        assertThat(on.values().stream().flatMap(f -> f.demands().stream())).as(told).containsAll(c.demands());
        c.weights().forEach((rule, weight) -> assertThat(on).as(told).hasEntrySatisfying(rule, f -> assertThat(f.on(c.service())).isEqualTo(weight)));
        c.standings().forEach((service, weight) ->
            assertThat(assessment.standing(service).orElseThrow().weight()).as(service + ": " + told).isEqualTo(weight));
    }

    private static String told(Case c, Assessment assessment) {
        String findings = assessment.on(c.service()).stream()
            .map(f -> "  %s: %s, by %s, for %s%s".formatted(f.ruleId(), f.on(c.service()).code(), f.causes(),
                f.facts().stream().map(fact -> assessment.facts().byId().get(fact)).toList(), f.onlyIfUnknown() ? " (not known)" : ""))
            .collect(Collectors.joining("\n"));
        return "%s: %s\n%s\n%s\n".formatted(c.file(), c.name(), assessment.standing(c.service().id()).orElseThrow(), findings);
    }
}
