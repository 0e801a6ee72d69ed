package foretress.consultation;

import foretress.assessment.Assessment;
import foretress.consultation.Reading.OwedTest;
import foretress.intake.Assessments;
import foretress.intake.Plans;
import foretress.intake.Refusals;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.Owed;
import foretress.plan.TestPlan;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.SkinWords;
import foretress.web.Stylist;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The tests that come first, in words: which, how long, and by when they must begin. */
@RequestScoped
class OwedTests {
    private final Plans plans;
    private final Assessments assessments;
    private final OwedActs acts;
    private final Knowledge knowledge;
    private final Language language;
    private final Stylist say;
    private final SkinWords skin;
    private final ChairTime time;
    private final Clock clock;
    private final Refusals refusals;

    OwedTests(Plans plans, Assessments assessments, OwedActs acts, Knowledge knowledge, Language language, Stylist say, SkinWords skin, ChairTime time,
              Clock clock, Refusals refusals) {
        this.plans = plans;
        this.assessments = assessments;
        this.acts = acts;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
        this.skin = skin;
        this.time = time;
        this.clock = clock;
        this.refusals = refusals;
    }

    List<OwedTest> of(Visit visit, Assessment assessment) {
        TestPlan plan = plans.of(visit, assessment);
        List<OwedTest> tests = new ArrayList<>();
        plans.running(visit).forEach(r -> tests.add(owed(r.test(), "", skin.day_running(at(visit, r.readableFrom())), false, acts.read(visit))));
        plan.owed().forEach(o -> tests.add(owed(o.test(), say.consultation_owed_wait((int) o.takes().toHours()),
            latest(visit, o), o.conflict().isPresent(), acts.begin(visit, o.test()))));
        plan.onTheDay().forEach(t -> tests.add(owed(t, "", say.consultation_owed_at_chair(), false, acts.begin(visit, t))));
        return OwedActs.withNext(tests);
    }

    private OwedTest owed(String test, String how, String latest, boolean late, OwedActs.Act act) {
        return new OwedTest(words().test(test), how, latest, late, act.href(), act.words(), false);
    }

    /** What comes first whatever is answered. */
    List<OwedTest> atLeast(Visit visit) {
        return of(visit, assessments.atLeast(visit, Answers.NONE));
    }

    private String latest(Visit visit, Owed owed) {
        return owed.conflict().isPresent() ? say.consultation_owed_late(at(visit, owed.latestStart()))
            : say.consultation_owed_latest(at(visit, owed.lastOpenStart().orElse(owed.latestStart())));
    }

    /** What follows for this appointment: a test the client refused; one that no longer fits before it, and when it would. */
    List<String> follows(Visit visit, Assessment assessment) {
        Stream<String> late = plans.of(visit, assessment).conflicts().stream()
            .map(o -> say.consultation_too_soon(words().test(o.test()), (int) o.takes().toHours(), at(visit, clock.instant().plus(o.takes()))));
        Stream<String> refused = refusals.of(visit).stream().sorted().map(test -> say.consultation_refused(words().test(test)));
        return Stream.concat(refused, late).toList();
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
