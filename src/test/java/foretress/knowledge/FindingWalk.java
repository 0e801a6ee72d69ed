package foretress.knowledge;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.TestFact;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes docs/reference/how-a-finding-is-made.md: one invented client, from answers to standing, as the program reckons it. */
final class FindingWalk {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    private final Knowledge knowledge;
    private final Words words;
    private final Service service;
    private final Answers said;
    private final Answers all;

    FindingWalk(Knowledge knowledge) {
        this.knowledge = knowledge;
        this.words = knowledge.words("en");
        this.service = knowledge.ruleSet().service("highlights").orElseThrow();
        var lotion = new SaidTreatment("restorer", new SaidDate.InSeason(Season.SUMMER, Year.of(2024)),
            "whole", "home", "regularly");
        this.said = new Answers(Map.of("darkening-lotion", Answer.Chosen.of("some-time-ago"), "treatments",
            new Answer.Treatments(List.of(lotion)),
            "hair-length", new Answer.Length(40, true), "hair-state", Answer.DONT_KNOW));
        this.all = new BaseClient(knowledge).complete(said, service.chemistries(), Set.of());
    }

    String write() {
        TestFact skin = TestFact.sound("skin-test", "negative", DAY.minusDays(3), DAY.minusDays(1));
        TestFact quiet =
            TestFact.sound("incompatibility-test", "slight-lightening", DAY.minusDays(3), DAY.minusDays(2));
        TestFact pulled = TestFact.sound("elasticity-test", "pass", DAY, DAY);
        TestFact cutting = TestFact.sound("test-cutting", "good", DAY, DAY);
        return """
            # How a finding is made

            One invented client, walked by hand. Everything with a number or a weight on this page is what the program says; a test makes the page anew and
            fails when they differ.

            ## 1. What she says

            Highlights are booked for %s. She is 36 and has 40 cm of hair, measured at the chair. She remembers a lotion "rubbed in for some months, summer two
            years ago", and to whether her hair breaks she says "I don't know". To everything else she says no.

            ## 2. Answers become facts

            Each fact has classes from better to worse. What is not known lies between the best and the worst it may be. The lotion is a restorer, so metal. At the
            slowest growth (0.5 cm a month, four months of rest) 40 cm reach back 84 months, so it is still on the hair. Facts that are not at their best:

            %s

            ## 3. Facts meet rules

            A rule fires unless its condition is false under *every* reading of what is not known. These fire on highlights, that is on lightening and its toner,
            which is a dye:

            %s

            ## 4. The heaviest stands

            The standing is **%s**, by %s. Nothing takes a finding away; a test changes a fact, and the condition of the demand is then false.

            ## 5. Tests change facts

            | after | standing | still asked for |
            |---|---|---|
            %s

            The quiet metal test clears nothing by itself: the history outranks it, and a test cutting is asked for. With every test good it stays restricted, because
            of what the hair has had. Had *nothing at all* happened in the metal test, the service would stand at **%s**.

            ## 6. Not knowing

            Had she said "no" to breaking hair, the finding on it would be absent; had she said "yes", it would weigh the same or more. Had she left the question
            out, it would weigh as her "I don't know" does: **%s**. See [unknown is never no](../why/2026-11-24-unknown-is-never-no.md).
            """.formatted(DAY, facts(assess()), findings(assess()), weight(assess()), deciding(assess()),
            String.join("\n", row("nothing", assess()), row("a skin test, read and clear", assess(skin)),
                row("and a quiet metal test", assess(skin, quiet)),
                row("and a pull that came back", assess(skin, quiet, pulled)),
                row("and a good test cutting", assess(skin, quiet, pulled, cutting))),
            weight(assess(skin,
                TestFact.sound("incompatibility-test", "nothing-happened", DAY.minusDays(3), DAY.minusDays(2)))),
            finding(assess(all.without("hair-state")), "hair-breaks-not-tested").weight().code());
    }

    private Assessment assess(TestFact... tests) {
        return assess(all, tests);
    }

    private Assessment assess(Answers answers, TestFact... tests) {
        Facts facts = knowledge.factFinder()
            .find(new Situation(DAY, DAY, Optional.of(LocalDate.of(1990, 1, 1)), service.chemistries(),
                knowledge.questionnaire(), answers, knowledge.policy("uk"), List.of(tests), Optional.of(40)));
        return Assessor.assess(knowledge.ruleSet(), facts, List.of(service));
    }

    private static Finding finding(Assessment assessment, String rule) {
        return assessment.finding(rule).orElseThrow();
    }

    private String facts(Assessment assessment) {
        return "| fact | class | answers it comes from |\n|---|---|---|\n" + new TreeMap<>(assessment.facts().byId())
            .values().stream().filter(value -> value.worst() > 0 && value.notAsked().isEmpty())
            .map(value -> "| %s | %s | %s |".formatted(words.fact(value.fact()), classes(value), codes(value.causes())))
            .collect(Collectors.joining("\n"));
    }

    private static String classes(FactValue value) {
        return value.isKnown() ? "`%s`".formatted(value.bestClass())
            : "`%s` to `%s`".formatted(value.bestClass(), value.worstClass());
    }

    private String findings(Assessment assessment) {
        return "| rule | condition | weighs | why |\n|---|---|---|---|\n"
            + assessment.on(service).stream().map(finding -> {
                Rule rule = knowledge.ruleSet().rule(finding.ruleId()).orElseThrow();
                return "| [%s](rules.md) | `%s` | %s%s | %s |".formatted(rule.id(),
                    rule.when().toString().replace("|", "\\|"), finding.on(service).code(),
                    finding.onlyIfUnknown() ? ", as not known" : "", codes(finding.facts()));
            }).collect(Collectors.joining("\n"));
    }

    private String row(String after, Assessment assessment) {
        String owed = assessment.on(service).stream()
            .filter(f -> f.on(service) == assessment.standings().get(0).weight()).flatMap(f -> f.demands().stream())
            .distinct().map(words::test).collect(Collectors.joining(", "));
        return "| %s | %s | %s |".formatted(after, weight(assessment), owed.isEmpty() ? "nothing" : owed);
    }

    private static String weight(Assessment assessment) {
        return assessment.standings().get(0).weight().code();
    }

    private static String deciding(Assessment assessment) {
        return codes(assessment.standings().get(0).deciding());
    }

    private static String codes(List<String> ids) {
        return ids.isEmpty() ? "nothing said, nothing tested"
            : ids.stream().map(id -> "`" + id + "`").collect(Collectors.joining(", "));
    }
}
