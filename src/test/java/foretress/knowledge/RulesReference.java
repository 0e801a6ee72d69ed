package foretress.knowledge;

import foretress.assessment.Rule;
import foretress.assessment.Weight;
import foretress.knowledge.Words.FindingWords;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes docs/reference/rules.md from knowledge. */
final class RulesReference {
    private final Knowledge knowledge;
    private final Words words;
    private final StringBuilder page = new StringBuilder();

    RulesReference(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.words = knowledge.words("en");
    }

    String write() {
        line("# The rules");
        line("");
        line(
            "Every rule with its condition, what it weighs on which chemistry or step, the tests it asks for and where it comes from. This");
        line(
            "page is made from `src/main/knowledge`; a test fails when it is out of date and says how to make it anew.");
        line("");
        line(
            "A rule fires unless its condition is false under every reading of what is not known. Weights, light to heavy: nothing found,");
        line(
            "note, restricts, test first, could not be assessed, prevents. A service stands as its heaviest step stands.");
        line("");
        line("There are %d rules over %d facts.".formatted(knowledge.ruleSet().rules().size(),
            knowledge.ruleSet().facts().size()));
        knowledge.ruleSet().rules().forEach(this::rule);
        return page.toString();
    }

    private void rule(Rule rule) {
        FindingWords said = words.finding(rule.id());
        line("");
        line("## " + said.title());
        line("");
        line("`%s`%s".formatted(rule.id(), rule.lasting() ? ", and nobody can go against it" : ""));
        line("");
        line("- when `%s`".formatted(rule.when()));
        byWeight(rule).forEach((weight, on) -> line("- **%s**: %s".formatted(weight.code(), String.join(", ", on))));
        rule.ifUnknown().ifPresent(
            weight -> line("- if only an unknown reading makes it fire: at most *%s*".formatted(weight.code())));
        if (!rule.demands().isEmpty()) {
            line("- asks for: " + rule.demands().stream().map(words::test).collect(Collectors.joining(", ")));
        }
        if (rule.wordFirst()) {
            line("- no skin test is made before the word it asks for");
        }
        if (rule.readAgainDays() > 0) {
            line("- a skin test is read once more on day %d or later, and proves nothing before"
                .formatted(rule.readAgainDays()));
        }
        line("- do: " + said.do_());
        line("- the client reads: " + said.client());
        line("- from: " + rule.sources().stream().map(RulesReference::link).collect(Collectors.joining(", ")));
    }

    private static Map<Weight, List<String>> byWeight(Rule rule) {
        return rule.weights().entrySet().stream().sorted(Map.Entry.comparingByKey())
            .collect(Collectors.groupingBy(Map.Entry::getValue,
                () -> new TreeMap<Weight, List<String>>(Comparator.reverseOrder()),
                Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
    }

    private static String link(String key) {
        return "[%s](sources.md#%s)".formatted(key, key);
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
