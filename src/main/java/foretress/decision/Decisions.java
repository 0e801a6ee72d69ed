package foretress.decision;

import foretress.assessment.Service;
import foretress.decision.ServiceDecision.Against;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.ledger.Ledger;
import foretress.running.Stored;
import foretress.salon.Role;
import foretress.salon.Staff;
import foretress.vault.SealedJson;
import foretress.visit.Booked;
import foretress.visit.BookedService;
import foretress.visit.State;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * The one place where a decision comes about. A flag advises; a named person decides (GDPR Art. 22): without one nothing here
 * can be called, and nowhere else does a visit become decided.
 */
@Singleton
public class Decisions {
    private final CurrentAssessment assessed;
    private final Assessments assessments;
    private final Intake intake;
    private final BookedChemistry chemistry;
    private final Gate gate;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    Decisions(CurrentAssessment assessed, Assessments assessments, Intake intake, BookedChemistry chemistry, Gate gate,
        SealedJson sealed,
        Ledger ledger, Clock clock) {
        this.assessed = assessed;
        this.assessments = assessments;
        this.intake = intake;
        this.chemistry = chemistry;
        this.gate = gate;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** What was chosen for one planned service. */
    public record Choice(Verdict verdict, Optional<LocalDate> until, String conditions, Optional<String> alternative) {}

    /**
     * A decision as somebody wants to make it.
     *
     * @param assessmentId the assessment that stood on the page
     * @param decided how many decisions stood on the page
     * @param choices one for each planned service, in order
     * @param reason why findings in the way are gone against, by an owner who has just proved again who they are
     */
    public record Wanted(UUID submission, UUID assessmentId, int decided, List<Choice> choices,
        Optional<String> reason) {
        public Wanted {
            Stored.needed(submission, assessmentId);
            choices = List.copyOf(choices);
        }

        Refusal.Decider decider(Staff by) {
            return new Refusal.Decider(by.role == Role.OWNER, reason.orElse(""));
        }
    }

    /**
     * Records it. The same submission again gives the same decision. Call it outside a
     * transaction.
     *
     * @throws Refusal.Refused with every reason, when it may not be made as things stand at this moment
     */
    public KeptDecision record(UUID visitId, Staff by, Wanted wanted) {
        Objects.requireNonNull(by, "a decision is a person's");
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
            return KeptDecision.submitted(wanted.submission()).filter(earlier -> earlier.visitId().equals(visitId))
                .orElseGet(() -> make(visit, by, wanted));
        });
    }

    private KeptDecision make(Visit visit, Staff by, Wanted wanted) {
        Refusal.of(visit.state).ifPresent(Decisions::refuse);
        CurrentAssessment.Now now = assessed.now(visit);
        List<Service> planned = chemistry.services(visit);
        if (!now.id().equals(wanted.assessmentId()) || planned.size() != wanted.choices().size()
            || versions(visit.id) != wanted.decided()) {
            refuse(Refusal.OUTDATED);
        }
        Gate.Open open = gate.open(visit, now);
        List<ServiceDecision> services = decided(visit, wanted, planned, now, open, wanted.decider(by));
        KeptDecision decision = keep(visit, by, wanted, services, open);
        follow(visit, services);
        ledger.note(by.id.toString(),
            wanted.reason().isPresent() ? "decision against findings recorded" : "decision recorded",
            visit.id.toString());
        return decision;
    }

    private static void refuse(Refusal why) {
        throw new Refusal.Refused(why);
    }

    /** A visit is put off when none of it goes ahead, until the last day anything of it waits for. */
    static void follow(Visit visit, List<ServiceDecision> services) {
        if (visit.state != State.DECIDED) {
            visit.moveTo(State.DECIDED);
        }
        if (services.stream().anyMatch(s -> s.verdict().goesAhead())) {
            visit.keepDate();
        } else {
            visit.postpone(services.stream().flatMap(s -> s.until().stream()).max(Comparator.naturalOrder()));
        }
    }

    private List<ServiceDecision> decided(Visit visit, Wanted wanted, List<Service> planned, CurrentAssessment.Now now,
        Gate.Open open, Refusal.Decider by) {
        List<ServiceDecision> decided = new ArrayList<>();
        Set<Refusal> refusals = EnumSet.noneOf(Refusal.class);
        for (int place = 0; place < planned.size(); place++) {
            Choice choice = wanted.choices().get(place);
            List<Gate.Weighing> on = gate.on(visit, now, planned.get(place));
            refusals.addAll(Refusal.of(new Refusal.Asked(choice.verdict(), choice.conditions()), by, open, on));
            decided.add(decided(visit, place, planned.get(place), choice, on));
        }
        if (!refusals.isEmpty()) {
            throw new Refusal.Refused(refusals);
        }
        return decided;
    }

    private static ServiceDecision decided(Visit visit, int place, Service service, Choice choice,
        List<Gate.Weighing> on) {
        List<Against> against = on.stream().filter(w -> choice.verdict().goesAhead() && w.inTheWay())
            .map(w -> new Against(w.finding().ruleId(), w.weight())).toList();
        Optional<String> booked =
            AdaptedService.first(visit.id, place).map(a -> a.fromService()).filter(id -> !id.equals(service.id()));
        return new ServiceDecision(service.id(), service.stepIds(), booked, Gate.standing(on), choice.verdict(),
            choice.until(), choice.conditions(),
            choice.alternative(), against);
    }

    private KeptDecision keep(Visit visit, Staff by, Wanted wanted, List<ServiceDecision> services, Gate.Open open) {
        var body = new KeptDecision.Body(services, wanted.reason().orElse(""), Staff.atWork().size() == 1);
        var decision =
            new KeptDecision(visit, wanted, open.signature().consent().map(c -> c.id()), by.id, clock.instant(),
                sealed.sealing(visit.client.id, body));
        decision.persist();
        return decision;
    }

    /** How many decisions the visit has; each one counts one further. */
    int versions(UUID visitId) {
        return latest(visitId).map(earlier -> earlier.versionNo()).orElse(0);
    }

    /**
     * Plans another service or other steps in a place of the visit; the client has not agreed to that yet.
     *
     * @throws Refusal.Refused when the visit is over, or something else is planned by now
     */
    public void adapt(UUID visitId, Staff by, List<Booked> planned) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
            List<Booked> before = planned(visit);
            if (!visit.state.isAhead() || before.size() != planned.size()) {
                refuse(visit.state.isAhead() ? Refusal.OUTDATED : Refusal.OVER);
            }
            for (int place = 0; place < planned.size(); place++) {
                if (!before.get(place).equals(planned.get(place))) {
                    new AdaptedService(visitId, place, before.get(place), planned.get(place), by.id, clock.instant())
                        .persist();
                }
            }
            visit.plan(planned);
            assessments.renew(visit, intake.said(visit));
            ledger.note(by.id.toString(), "service adapted", visitId.toString());
        });
    }

    public static List<Booked> planned(Visit visit) {
        return visit.services.stream().map((BookedService s) -> new Booked(s.serviceId, s.stepIds())).toList();
    }

    /** The decision that holds; empty before the first. */
    public Optional<KeptDecision> latest(UUID visitId) {
        return all(visitId).stream().findFirst();
    }

    public boolean alreadyMade(UUID visitId, UUID submission) {
        return KeptDecision.submitted(submission).filter(made -> made.visitId().equals(visitId)).isPresent();
    }

    /** Every decision of the visit, newest first. */
    public List<KeptDecision> all(UUID visitId) {
        return KeptDecision.ofVisit(visitId);
    }

    /** Has every decision of each of these visits at hand. */
    public void ready(Collection<UUID> visits) {
        KeptDecision.ready(visits);
    }

    public KeptDecision.Body read(KeptDecision decision) {
        return sealed.open(decision, KeptDecision.Body.class);
    }
}
