package foretress.bench;

import foretress.intake.Intake;
import foretress.intake.Plans;
import foretress.intake.Refusals;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.plan.Offers;
import foretress.plan.Owed;
import foretress.plan.TestPlan;
import foretress.skintest.SkinWords;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import foretress.web.Language;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The tests that come first, in words: which, how long, and by when they must begin. */
@RequestScoped
public class OwedLines {
    private final Plans plans;
    private final Intake intake;
    private final OwedActs acts;
    private final Knowledge knowledge;
    private final Language language;
    private final StylistWords say;
    private final SkinWords skin;
    private final ChairTime time;
    private final Refusals refusals;

    OwedLines(Plans plans, Intake intake, OwedActs acts, Knowledge knowledge, Language language, StylistWords say,
        SkinWords skin, ChairTime time,
        Refusals refusals) {
        this.plans = plans;
        this.intake = intake;
        this.acts = acts;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
        this.skin = skin;
        this.time = time;
        this.refusals = refusals;
    }

    /** Before the first answer it is what is owed at least. */
    public List<OwedLine> of(Visit visit) {
        return of(visit, plan(visit));
    }

    /** The same of a plan that was made already: to make one assesses the visit several times. */
    public List<OwedLine> of(Visit visit, TestPlan plan) {
        Set<String> refused = refusals.of(visit);
        List<OwedLine> tests = new ArrayList<>();
        plans.running(visit).forEach(
            r -> tests.add(owed(r.test(), "", skin.day_running(at(visit, r.readableFrom())), false, acts.read(visit))));
        plan.owed().forEach(o -> tests.add(owed(o.test(), refused.contains(o.test()) ? say.refused_how() : how(o),
            latest(visit, o), o.conflict().isPresent(), begin(visit, o.test(), refused))));
        plan.waiting().forEach(t -> tests.add(owed(t, "", say.consultation_owed_waiting(), false, OwedActs.Act.NONE)));
        plan.onTheDay().forEach(t -> tests.add(owed(t, refused.contains(t) ? say.refused_how() : "",
            say.consultation_owed_at_chair(), false, begin(visit, t, refused))));
        return OwedActs.withNext(tests);
    }

    private OwedActs.Act begin(Visit visit, String test, Set<String> refused) {
        return refused.contains(test) && visit.state.isAhead()
            ? new OwedActs.Act(RefusedPages.at(visit), say.refused_link()) : acts.begin(visit, test);
    }

    private OwedLine owed(String test, String how, String latest, boolean late, OwedActs.Act act) {
        return new OwedLine(words().test(test), how, latest, late, act.href(), act.words(), false);
    }

    public TestPlan plan(Visit visit) {
        return plans.of(visit, intake.said(visit));
    }

    private String how(Owed owed) {
        int hours = (int) owed.takes().toHours();
        return owed.readings().size() < 2 ? say.consultation_owed_wait(hours)
            : say.consultation_owed_wait_again(hours, (int) owed.readings().get(0).toHours(),
                (int) Duration.ofHours(hours).toDays());
    }

    /** By when it must begin, and whether anything may still go wrong then. */
    String latest(Visit visit, Owed owed) {
        if (owed.conflict().isPresent()) {
            return owed.conflict().get().reason() == Owed.Reason.STANDS_TOO_SHORT ? say.consultation_owed_stands_short()
                : say.consultation_owed_late(at(visit, owed.latestStart()));
        }
        boolean tight = Offers.of(List.of(owed), 1).slots().stream().anyMatch(Offers.Slot::tight);
        return tight ? say.consultation_owed_latest_tight(at(visit, owed.latestStart()))
            : say.consultation_owed_latest(at(visit, owed.latestStart()));
    }

    /** What follows for this appointment: a test the client refused; one that no longer fits before it, and when it would. */
    public List<String> follows(Visit visit, TestPlan plan) {
        Stream<String> late = plan.conflicts().stream().map(o -> follows(visit, o));
        Stream<String> refused =
            refusals.of(visit).stream().sorted().map(test -> say.consultation_refused(words().test(test)));
        return Stream.concat(refused, late).toList();
    }

    private String follows(Visit visit, Owed owed) {
        String test = words().test(owed.test());
        int hours = (int) owed.takes().toHours();
        String why = switch (owed.conflict().orElseThrow().reason()) {
            case TOO_SOON -> say.consultation_too_soon(test, hours);
            case CLOSED_UNTIL_TOO_LATE, CLOSED_AT_THE_READING -> say.consultation_shut(test, hours);
            case STANDS_TOO_SHORT -> say.consultation_stands_short(test, hours);
            case TOO_YOUNG -> say.consultation_too_young(test);
        };
        return owed.visitFrom().map(from -> why + " " + say.consultation_visit_from(at(visit, from))).orElse(why);
    }

    private String at(Visit visit, Instant moment) {
        return time.dayAndTime(moment.atZone(visit.zone()));
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
