package foretress.decision;

import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.bench.OwedLine;
import foretress.bench.OwedLines;
import foretress.decision.DecisionForm.One;
import foretress.decision.DecisionText.Weighs;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.salon.Menu;
import foretress.salon.Staff;
import foretress.visit.Visit;
import foretress.web.ChairTime;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A visit as the decision page shows it. What is absent is an empty text. */
@RequestScoped
public class DecisionShown {
    private final Decisions decisions;
    private final Gate gate;
    private final Signature signature;
    private final BookedChemistry chemistry;
    private final Intake intake;
    private final Menu menu;
    private final DecisionText text;
    private final OwedLines owedTests;
    private final DecisionWords say;
    private final ChairTime time;

    DecisionShown(Decisions decisions, Gate gate, Signature signature, BookedChemistry chemistry, Intake intake,
        Menu menu,
        DecisionText text, OwedLines owedTests, DecisionWords say, ChairTime time) {
        this.decisions = decisions;
        this.gate = gate;
        this.signature = signature;
        this.chemistry = chemistry;
        this.intake = intake;
        this.menu = menu;
        this.text = text;
        this.owedTests = owedTests;
        this.say = say;
        this.time = time;
    }

    /** What must happen before anything can go ahead. */
    public record Before(String missing, String due, String look, List<String> signature,
        List<DecisionText.Changed> changes) {
        public boolean isNone() {
            return missing.isEmpty() && due.isEmpty() && look.isEmpty() && signature.isEmpty();
        }
    }

    /**
     * A planned service.
     *
     * @param inTheWay what must be met or gone against
     * @param other what else weighs on it
     */
    public record Planned(int place, String id, String service, String booked, Weight standing, String word,
        List<Weighs> inTheWay, List<Weighs> other,
        boolean hasToner, boolean withoutToner, List<Slip> verdicts, One filled) {
        /** The owner may let it go ahead all the same. */
        boolean mayBeGoneAgainst() {
            return !inTheWay.isEmpty()
                && verdicts.stream().anyMatch(slip -> slip.code().equals(Verdict.PROCEED_WITH_CHANGES.code()));
        }

        /** The name of this service's field of that kind. */
        public String name(String part) {
            return part + "-" + place;
        }
    }

    /** A verdict that can be chosen. */
    public record Slip(String code, String label, String hint, boolean chosen) {}

    public record Offer(String id, String name) {}

    /** A decision as it was made. */
    public record Made(String by, String reason, String alone, List<MadeOne> services) {}

    public record MadeOne(String service, String booked, String verdict, String until, String conditions,
        String alternative, List<String> against) {}

    Before before(Visit visit, CurrentAssessment.Now now) {
        Gate.Open open = gate.open(visit, now);
        int missing = open.missing().size();
        int due = (int) open.due().stream().filter(q -> !open.missing().contains(q)).count();
        return new Before(missing == 0 ? "" : say.missing_answers(missing), due == 0 ? "" : say.ask_now(due),
            open.look() ? say.look_again() : "",
            open.signature().changed().stream().sorted().map(this::changed).toList(),
            signature.since(visit, now).map(text::changes).orElse(List.of()));
    }

    private String changed(Signature.Changed changed) {
        return switch (changed) {
            case NEVER_SIGNED -> say.signature_never();
            case ANSWERS -> say.signature_answers();
            case FINDINGS -> say.signature_findings();
            case TESTS -> say.signature_tests();
            case SERVICE -> say.signature_service();
        };
    }

    List<Planned> planned(Visit visit, CurrentAssessment.Now now, DecisionForm form, boolean owner) {
        List<Planned> planned = new ArrayList<>();
        List<Service> services = chemistry.services(visit);
        Gate.Open open = gate.open(visit, now);
        for (int place = 0; place < services.size(); place++) {
            planned.add(planned(visit, place, services.get(place), gate.on(visit, now, services.get(place)),
                form.services().get(place), open, owner));
        }
        return planned;
    }

    private Planned planned(Visit visit, int place, Service service, List<Gate.Weighing> on, One filled, Gate.Open open,
        boolean owner) {
        Weight standing = Gate.standing(on);
        Optional<Step> toner = menu.service(service.id()).flatMap(Service::removable);
        String booked =
            AdaptedService.first(visit.id, place).map(a -> say.booked_as(text.service(a.fromService()))).orElse("");
        return new Planned(place, service.id(), text.service(service.id()), booked, standing, text.word(standing),
            on.stream().filter(Gate.Weighing::inTheWay).map(w -> text.weighs(w, service)).toList(),
            on.stream().filter(w -> !w.inTheWay()).map(w -> text.weighs(w, service)).toList(),
            toner.isPresent(), toner.filter(step -> !service.stepIds().contains(step.id())).isPresent(),
            verdicts(open, on, owner, filled), filled);
    }

    /** Only what can be chosen is offered: what nothing refuses but words not written yet. */
    private List<Slip> verdicts(Gate.Open open, List<Gate.Weighing> on, boolean owner, One filled) {
        var by = new Refusal.Decider(owner, "");
        return Arrays.stream(Verdict.values())
            .filter(verdict -> Refusal.of(new Refusal.Asked(verdict, ""), by, open, on).stream()
                .allMatch(Refusal::isMendedByWriting))
            .map(verdict -> new Slip(verdict.code(), word(verdict), hint(verdict), filled.is(verdict.code()))).toList();
    }

    private String hint(Verdict verdict) {
        return switch (verdict) {
            case PROCEED -> say.verdict_proceed_hint();
            case PROCEED_WITH_CHANGES -> say.verdict_proceed_with_changes_hint();
            case POSTPONE -> say.verdict_postpone_hint();
            case DECLINE -> say.verdict_decline_hint();
        };
    }

    String word(Verdict verdict) {
        return switch (verdict) {
            case PROCEED -> say.verdict_proceed();
            case PROCEED_WITH_CHANGES -> say.verdict_proceed_with_changes();
            case POSTPONE -> say.verdict_postpone();
            case DECLINE -> say.verdict_decline();
        };
    }

    List<Offer> offered() {
        return menu.offered().stream().map(s -> new Offer(s.id(), text.service(s.id()))).toList();
    }

    List<Made> made(Visit visit) {
        return decisions.all(visit.id).stream().map(d -> made(visit, d)).toList();
    }

    private Made made(Visit visit, KeptDecision decision) {
        KeptDecision.Body body = decisions.read(decision);
        String name = Staff.nameOf(decision.decidedBy());
        return new Made(say.by(name, time.dayAndTime(decision.decidedAt().atZone(visit.zone()))),
            body.reason().isEmpty() ? "" : say.reason_was(body.reason()),
            body.alone() && !body.reason().isEmpty() ? say.alone() : "",
            body.services().stream().map(this::made).toList());
    }

    private MadeOne made(ServiceDecision one) {
        return new MadeOne(text.service(one.serviceId()),
            one.bookedId().map(id -> say.booked_as(text.service(id))).orElse(""), word(one.verdict()),
            one.until().map(day -> say.until_day(text.day(day))).orElse(""), one.conditions(),
            one.alternative().map(id -> say.instead_proposed(text.service(id))).orElse(""),
            one.against().stream().map(a -> say.against_was(text.title(a.ruleId(), false), text.word(a.weight())))
                .toList());
    }

    /** What weighs otherwise than on the page that was made on that assessment; nothing when it is not one of this visit's. */
    List<DecisionText.Changed> since(Visit visit, Optional<foretress.assessment.Assessment> then,
        CurrentAssessment.Now now) {
        return then.map(before -> text.changes(Difference.between(before, now.assessment(), chemistry.services(visit))))
            .orElse(List.of());
    }

    /** Nobody has begun to answer, so there is nothing to decide on yet; blank otherwise. */
    String notYet(Visit visit) {
        return unanswered(visit) ? say.visit_not_answered(!owedAtLeast(visit).isEmpty()) : "";
    }

    /** What comes first whatever the client will answer; empty once there are answers. */
    List<OwedLine> owedAtLeast(Visit visit) {
        return unanswered(visit) ? owedTests.of(visit) : List.of();
    }

    private static boolean unanswered(Visit visit) {
        return Refusal.of(visit.state).filter(Refusal.NOT_BEGUN::equals).isPresent();
    }

    /** Whether anything can be decided: somebody began to answer, and the visit is not over. */
    boolean open(Visit visit) {
        return Refusal.of(visit.state).isEmpty();
    }
}
