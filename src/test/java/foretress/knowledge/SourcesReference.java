package foretress.knowledge;

import foretress.assessment.Source;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes docs/reference/sources.md from knowledge. */
final class SourcesReference {
    private final Knowledge knowledge;

    SourcesReference(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    String write() {
        return """
            # Sources

            Where the rules and policies come from, and what kind of source each is: *published* was looked up, *common practice* is taught and written
            in the trade with no authority behind it, *from memory* was not looked up, *own decision* is ours and has its reasons in
            [docs/why](../why). Before it stands whom the source binds: a *law* everybody, a *maker* whoever uses the product, a *trade rule* its
            members, a *house rule* this house; *health advice*, *research* and *teaching* bind nobody by themselves. This page is made from `src/main/knowledge/sources.yaml`; a test fails when it is out of date and says how to make it anew.

            %s
            """.formatted(
            new TreeMap<>(knowledge.ruleSet().sources()).entrySet().stream().map(e -> source(e.getKey(), e.getValue()))
                .collect(Collectors.joining("\n\n")));
    }

    private String source(String key, Source source) {
        String rules = knowledge.ruleSet().rules().stream().filter(rule -> rule.sources().contains(key))
            .map(rule -> "`" + rule.id() + "`")
            .collect(Collectors.joining(", "));
        return "## %s\n\n%s. *%s, %s*\n%s%s%s%s%s".formatted(key, source.title(), words(source.kind()),
            words(source.status()),
            source.place().map("\n- where: "::concat).orElse(""), source.link().map("\n- link: "::concat).orElse(""),
            source.read().map("\n- read: "::concat).orElse(""),
            source.reasons().map(page -> "\n- reasons: [%s](../../%s)".formatted(page, page)).orElse(""),
            rules.isEmpty() ? "" : "\n- rules: " + rules);
    }

    private static String words(Enum<?> code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
