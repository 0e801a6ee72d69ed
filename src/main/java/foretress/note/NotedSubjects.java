package foretress.note;

import foretress.assessment.Assessment;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.TestFact;
import foretress.bench.BenchElasticityPages.Choice;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a doctor can be asked about: the facts that rules ask a word about. */
@RequestScoped
class NotedSubjects {

    private final Knowledge knowledge;
    private final Intake intake;
    private final Assessments assessments;
    private final Language language;

    NotedSubjects(Knowledge knowledge, Intake intake, Assessments assessments, Language language) {
        this.knowledge = knowledge;
        this.intake = intake;
        this.assessments = assessments;
        this.language = language;
    }

    boolean known(String about) {
        return all().anyMatch(about::equals);
    }

    /** In words. */
    String name(String about) {
        return knowledge.words(language.getTag()).fact(about);
    }

    /** Those that are asked for at this visit in front, and then the rest; the only one asked for is chosen already. */
    List<Choice> of(Visit visit, String chosen) {
        Set<String> owed = owed(visit);
        String first = chosen.isEmpty() && owed.size() == 1 ? owed.iterator().next() : chosen;
        return all().sorted(Comparator.comparing(about -> !owed.contains(about)))
            .map(about -> new Choice(about, name(about), about.equals(first))).toList();
    }

    /** What a finding of this visit asks a doctor's word about. */
    Set<String> owed(Visit visit) {
        Answers said = intake.said(visit);
        Set<String> owed = new LinkedHashSet<>();
        if (!said.byQuestion().isEmpty()) {
            Assessment now = assessments.of(visit, said);
            now.findings().stream().filter(f -> f.demands().contains(TestFact.ADVICE))
                .forEach(f -> about(f).forEach(owed::add));
        }
        return owed;
    }

    private Stream<String> about(Finding finding) {
        return knowledge.ruleSet().rule(finding.ruleId()).map(Rule::when).stream()
            .flatMap(when -> when.reads().stream())
            .flatMap(id -> knowledge.ruleSet().fact(id).stream()).filter(NotedSubjects::isAdvice)
            .flatMap(NotedSubjects::of);
    }

    private Stream<String> all() {
        Set<String> asked = knowledge.ruleSet().rules().stream().filter(r -> r.demands().contains(TestFact.ADVICE))
            .flatMap(rule -> rule.when().reads().stream()).collect(Collectors.toSet());
        return knowledge.ruleSet().facts().stream().filter(NotedSubjects::isAdvice)
            .filter(def -> asked.contains(def.id())).flatMap(NotedSubjects::of);
    }

    private static boolean isAdvice(FactDef def) {
        return def.isComputedAs(ComputedAs.MEDICAL_ADVICE);
    }

    private static Stream<String> of(FactDef def) {
        return def.computation().orElseThrow().of().stream();
    }
}
