package foretress.bench;

import foretress.alternative.Alternatives;
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
import foretress.visit.Visits;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import foretress.web.WeightSaid;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts the bench of a visit together. */
@RequestScoped
public class BenchOverviews {
    private final BenchRecords tests;
    private final Intake intake;
    private final Assessments assessments;
    private final OwedLines owedTests;
    private final Alternatives alternatives;
    private final Visits visits;
    private final BenchTails tails;
    private final BenchSay words;
    private final BenchWords say;
    private final StylistWords stylist;
    private final Knowledge knowledge;
    private final Menu menu;
    private final Language language;
    private final ChairTime time;

    BenchOverviews(BenchRecords tests, Intake intake, Assessments assessments, OwedLines owedTests,
        Alternatives alternatives, Visits visits, BenchTails tails,
        BenchSay words, BenchWords say, StylistWords stylist, Knowledge knowledge, Menu menu, Language language,
        ChairTime time) {
        this.tests = tests;
        this.intake = intake;
        this.assessments = assessments;
        this.owedTests = owedTests;
        this.alternatives = alternatives;
        this.visits = visits;
        this.tails = tails;
        this.words = words;
        this.say = say;
        this.stylist = stylist;
        this.knowledge = knowledge;
        this.menu = menu;
        this.language = language;
        this.time = time;
    }

    BenchOverview of(Visit visit) {
        Answers said = intake.said(visit);
        boolean begun = !said.byQuestion().isEmpty();
        Assessment assessment = assessments.of(visit, said);
        Weight standing = assessments.booked(visit, assessment);
        BenchHead head = BenchHead.of(visit, time);
        List<BenchRecord> made = tests.of(visit.client.id);
        List<Past> past = past(visit);
        List<BenchTimer> timers = tests.running().stream().map(this::timer).toList();
        return new BenchOverview(head, begun, standing, WeightSaid.of(standing, stylist), service(visit),
            head.ahead() ? owed(visit, head, begun ? assessment.findings() : List.of()) : List.of(), timers,
            kinds(head), length(visit, made),
            begun && head.ahead() ? alternatives.of(visit, assessment) : List.of(), past,
            version(standing, timers, past), news(past));
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

    private String length(Visit visit, List<BenchRecord> made) {
        return made.stream()
            .filter(t -> t.kind() == BenchKind.LENGTH && !t.struck() && t.visitId().equals(visit.id)).findFirst()
            .map(t -> say.length_measured(tests.body(t, BenchLengthBody.class).cm(), at(visit, t.madeAt()))).orElse("");
    }

    BenchTimer timer(BenchRecord test) {
        String name = words.kind(test.kind());
        long left = tests.leftSeconds(test);
        String client = visits.find(test.visitId()).map(v -> v.client.fullName()).orElse("");
        return new BenchTimer(test.id().toString(), BenchDoor.at(test), name, client, left, BenchNumber.clock(left),
            say.due(name, client));
    }

    /** When nobody watched the clock of this test, a sentence each. */
    List<String> unwatched(Visit visit, BenchRecord test) {
        return tests.gaps(test).stream().map(
            gap -> unwatched(gap, test.kind() == BenchKind.STRAND, hour(visit, gap.from()), hour(visit, gap.to())))
            .toList();
    }

    private String unwatched(BenchGap gap, boolean onTheHead, String from, String to) {
        if (gap.asleep()) {
            return onTheHead ? say.unwatched_asleep_head(from, to) : say.unwatched_asleep(from, to);
        }
        return onTheHead ? say.unwatched_head(from, to) : say.unwatched(from, to);
    }

    private String hour(Visit visit, Instant moment) {
        return time.hour(moment.atZone(visit.zone()));
    }

    /** Every test of the client, the newest first. */
    public List<Past> past(Visit visit) {
        return tests.of(visit.client.id).stream().map(t -> past(visit, t)).toList();
    }

    private Past past(Visit visit, BenchRecord test) {
        Optional<String> outcome = tests.outcome(test);
        String href = test.kind() == BenchKind.LENGTH ? "" : BenchDoor.at(test);
        return new Past(href, words.kind(test.kind()), at(visit, test.begun()), outcome.isPresent(),
            outcome.map(BenchSay::weight).orElse(Weight.NOTE),
            outcome.map(words::outcome).orElseGet(() -> unread(test)), test.struck(), tails.struck(visit, test));
    }

    private String unread(BenchRecord test) {
        if (test.kind() == BenchKind.LENGTH) {
            return say.length_cm(tests.body(test, BenchLengthBody.class).cm());
        }
        return test.struck() ? say.struck_short() : switch (test.state()) {
            case MADE -> say.state_prepared();
            case RUNNING -> say.state_running();
            case ENDED -> say.state_says_nothing();
        };
    }

    private static String version(Weight standing, List<BenchTimer> timers, List<Past> past) {
        List<String> running = timers.stream().map(t -> t.id() + (t.left() == 0)).toList();
        return Integer.toHexString(List.of(standing.name(), running, past.toString()).hashCode());
    }

    private static String news(List<Past> past) {
        return past.stream().findFirst().map(p -> p.name() + ": " + p.result()).orElse("");
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }

    private Words knowledgeWords() {
        return knowledge.words(language.getTag());
    }
}
