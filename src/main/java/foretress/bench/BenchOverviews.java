package foretress.bench;

import foretress.alternative.Instead;
import foretress.alternative.InsteadViews;
import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Weight;
import foretress.bench.BenchOverview.Kind;
import foretress.bench.BenchOverview.Owed;
import foretress.bench.BenchOverview.Past;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.salon.Menu;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts the bench of a visit together. */
@RequestScoped
public class BenchOverviews {
    private final Intake intake;
    private final Assessments assessments;
    private final OwedLines owedTests;
    private final InsteadViews instead;
    private final BenchTimers timers;
    private final BenchTried tried;
    private final BenchSay words;
    private final StylistWords stylist;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final ChairTime time;

    BenchOverviews(Intake intake, Assessments assessments, OwedLines owedTests, InsteadViews instead,
        BenchTimers timers, BenchTried tried, BenchSay words, StylistWords stylist, Knowledge knowledge, Menu menu,
        Language language, ChairTime time) {
        this.intake = intake;
        this.assessments = assessments;
        this.owedTests = owedTests;
        this.instead = instead;
        this.timers = timers;
        this.tried = tried;
        this.words = words;
        this.stylist = stylist;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.time = time;
    }

    BenchOverview of(Visit visit) {
        return of(visit, "");
    }

    /** @param known the version that is on the screen already: of that only clocks are asked for, every two seconds */
    BenchOverview of(Visit visit, String known) {
        Answers said = intake.said(visit);
        boolean begun = !said.byQuestion().isEmpty();
        Assessment assessment = assessments.of(visit, said);
        Weight standing = assessments.booked(visit, assessment);
        BenchHead head = BenchHead.of(visit, time);
        List<Past> past = tried.past(visit);
        List<BenchTimer> running = timers.running();
        String version = version(standing, running, past);
        Optional<Instead> ways = begun && head.ahead() && !version.equals(known)
            ? Optional.of(instead.of(visit, assessment)) : Optional.empty();
        return new BenchOverview(head, begun, standing, WeightSaid.of(standing, stylist), service(visit),
            head.ahead() ? owed(visit, head, begun ? assessment.findings() : List.of()) : List.of(), running,
            kinds(head), tried.length(visit),
            ways, past,
            new BenchNews(version, news(past)));
    }

    private String service(Visit visit) {
        return String.join(" + ", visit.services.stream().map(s -> menu.name(s.serviceId, knowledgeWords())).toList());
    }

    private List<Owed> owed(Visit visit, BenchHead head, List<Finding> findings) {
        TestPlan plan = owedTests.plan(visit);
        List<Owed> owed = new ArrayList<>();
        plan.owed().forEach(
            o -> owed.add(owed(head, findings, o.test(), owedTests.latest(visit, o), o.conflict().isPresent())));
        plan.waiting()
            .forEach(test -> owed.add(owed(head, findings, test, stylist.consultation_owed_waiting(), false)));
        plan.onTheDay()
            .forEach(test -> owed.add(owed(head, findings, test, stylist.consultation_owed_at_chair(), false)));
        return owed;
    }

    /** Why a test is owed: what speaks comes before what is silent. */
    private Owed owed(BenchHead head, List<Finding> findings, String test, String latest, boolean late) {
        String why = findings.stream().filter(f -> f.demands().contains(test))
            .min(Comparator.comparing(f -> !f.speaks())).map(this::title).orElse("");
        return new Owed(knowledgeWords().test(test), why, latest, late,
            head.ahead() ? BenchKind.of(test).map(head::begins).orElse("") : "");
    }

    private String title(Finding finding) {
        return knowledgeWords().finding(finding.ruleId(), finding.onlyIfUnknown()).title();
    }

    private List<Kind> kinds(BenchHead head) {
        return Arrays.stream(BenchKind.values()).filter(k -> k != BenchKind.LENGTH && head.ahead())
            .map(k -> new Kind(words.kind(k), words.what(k), head.begins(k))).toList();
    }

    private static String version(Weight standing, List<BenchTimer> timers, List<Past> past) {
        List<String> running = timers.stream().map(t -> t.id() + (t.left() == 0)).toList();
        return Integer.toHexString(List.of(standing.name(), running, past.toString()).hashCode());
    }

    private static String news(List<Past> past) {
        return past.stream().findFirst().map(p -> p.name() + ": " + p.result()).orElse("");
    }

    private Words knowledgeWords() {
        return knowledge.words(language.getTag());
    }
}
