package foretress.knowledge;

import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.TreatmentKind;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes docs/reference/services.md from knowledge. */
final class ServicesReference {
    private final Knowledge knowledge;
    private final Words words;
    private final Map<String, List<String>> groups;

    ServicesReference(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.words = knowledge.words("en");
        String services = "services.yaml";
        this.groups = new ServicesReader().read(Yaml
            .read(services, KnowledgeFiles.ofClassPath().under(services).get(services), new Complaints()).orElseThrow())
            .groups();
    }

    String write() {
        return """
            # Services

            What a salon offers, as steps, and each step as the chemistry that touches the client. A rule weighs on a chemistry or on a step; a
            service stands as its heaviest step stands. So a salon adds a service of its own by naming steps, and writes no rule. This page is made
            from `src/main/knowledge/services.yaml`; a test fails when it is out of date and says how to make it anew.

            ## The %d services

            | service | what for | steps | rules that can weigh on it |
            |---|---|---|---|
            %s

            ## The %d steps

            | step | chemistry | rules that can weigh on it |
            |---|---|---|
            %s

            ## Groups of chemistries

            A rule or a question that names a group means each of its members; the pages of rules and questions name the members.

            %s

            ## What a treatment leaves

            | treatment | leaves | may hold metal |
            |---|---|---|
            %s

            ## Tests that rules ask for

            %s
            """.formatted(knowledge.ruleSet().services().size(), rows(knowledge.ruleSet().services(), this::service),
            knowledge.ruleSet().steps().size(), rows(knowledge.ruleSet().steps(), this::step),
            rows(List.copyOf(groups.entrySet()),
                group -> "- `%s` %s".formatted(group.getKey(), String.join(", ", group.getValue()))),
            rows(knowledge.ruleSet().treatments().kinds(), ServicesReference::treatment),
            rows(knowledge.ruleSet().tests(), id -> "- `%s` %s".formatted(id, words.test(id))));
    }

    private static String treatment(TreatmentKind kind) {
        return "| `%s` | %s | %s |".formatted(kind.id(),
            kind.leaves().name().toLowerCase(Locale.ROOT).replace('_', ' '), kind.mayHoldMetal() ? "yes" : "no");
    }

    private static <T> String rows(List<T> all, java.util.function.Function<T, String> row) {
        return all.stream().map(row).collect(Collectors.joining("\n"));
    }

    private String service(Service service) {
        return "| %s `%s` | %s | %s | %d |".formatted(words.service(service.id()), service.id(),
            service.aims().stream().map(words::aim).collect(Collectors.joining(", ")),
            service.steps().stream().map(step -> words.step(step.id())).collect(Collectors.joining(", ")),
            knowledge.ruleSet().rules().stream()
                .filter(rule -> service.steps().stream().anyMatch(step -> weighs(rule, step))).count());
    }

    private String step(Step step) {
        return "| %s `%s` | %s | %d |".formatted(words.step(step.id()), step.id(),
            step.uses().stream().sorted().collect(Collectors.joining(", ")),
            knowledge.ruleSet().rules().stream().filter(rule -> weighs(rule, step)).count());
    }

    private static boolean weighs(foretress.assessment.Rule rule, Step step) {
        return rule.weightOn(step) != foretress.assessment.Weight.NOTHING_FOUND;
    }
}
