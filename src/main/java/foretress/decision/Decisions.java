package foretress.decision;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.decision.ServiceDecision.Against;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.Intake;
import foretress.ledger.Ledger;
import foretress.salon.Role;
import foretress.salon.Staff;
import foretress.vault.Durable;
import foretress.vault.Vault;
import foretress.visit.Booked;
import foretress.visit.BookedService;
import foretress.visit.State;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * The one place where a decision comes about. A flag advises; a named person decides (GDPR Art. 22): without one nothing here
 * can be called, and nowhere else does a visit become decided.
 */
@Singleton
public class Decisions {
    private final Assessed assessed;
    private final Assessments assessments;
    private final Intake intake;
    private final BookedChemistry chemistry;
    private final Gate gate;
    private final Vault vault;
    private final ObjectMapper json;
    private final Durable durable;
    private final Ledger ledger;
    private final Clock clock;

    Decisions(Assessed assessed, Assessments assessments, Intake intake, BookedChemistry chemistry, Gate gate, Vault vault, ObjectMapper json,
              Durable durable, Ledger ledger, Clock clock) {
        this.assessed = assessed;
        this.assessments = assessments;
        this.intake = intake;
        this.chemistry = chemistry;
        this.gate = gate;
        this.vault = vault;
        this.json = json;
        this.durable = durable;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** What was chosen for one planned service. */
    public record Choice(Verdict verdict, Optional<LocalDate> until, String conditions, Optional<String> alternative) {}

    /**
     * A decision as somebody wants to make it.
     *
     * @param assessmentId the assessment that stood on the page
     * @param choices one for each planned service, in order
     * @param reason why findings in the way are gone against, by an owner who has just proved again who they are
     */
    public record Wanted(UUID submission, UUID assessmentId, List<Choice> choices, Optional<String> reason) {
        public Wanted {
            choices = List.copyOf(choices);
        }
    }

    /**
     * Records it; once this returns it is on the device. The same submission again gives the same decision. Call it outside a
     * transaction.
     *
     * @throws Outdated when a newer assessment holds
     * @throws NotReady when something is missing before anything can go ahead: an answer of the day, a signature, conditions
     * @throws NobodyMay when a finding that nobody can go against stands in the way
     * @throws OnlyTheOwnerMay when findings stand in the way and the owner has not taken them on with a reason
     */
    public KeptDecision record(UUID visitId, Staff by, Wanted wanted) {
        Objects.requireNonNull(by, "a decision is a person's");
        KeptDecision decision = QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
            return KeptDecision.submitted(wanted.submission()).filter(earlier -> earlier.visitId.equals(visitId))
                .orElseGet(() -> make(visit, by, wanted));
        });
        durable.force();
        return decision;
    }

    private KeptDecision make(Visit visit, Staff by, Wanted wanted) {
        Assessed.Now now = assessed.now(visit);
        if (!now.id().equals(wanted.assessmentId())) {
            throw new Outdated();
        }
        List<ServiceDecision> services = decided(visit, by, wanted, now);
        boolean ahead = services.stream().anyMatch(s -> s.verdict().goesAhead());
        Gate.Open open = gate.open(visit, now);
        if (ahead && !open.none()) {
            throw new NotReady("asked again today, everything answered, signed as it stands now");
        }
        KeptDecision decision = keep(visit, by, wanted, services, open);
        if (visit.state != State.DECIDED) {
            visit.moveTo(State.DECIDED);
        }
        if (ahead) {
            visit.keepDate();
        } else {
            visit.postpone(services.stream().flatMap(s -> s.until().stream()).max(Comparator.naturalOrder()));
        }
        ledger.note(by.id.toString(), wanted.reason().isPresent() ? "decision against findings recorded" : "decision recorded", visit.id.toString());
        return decision;
    }

    private List<ServiceDecision> decided(Visit visit, Staff by, Wanted wanted, Assessed.Now now) {
        List<Service> planned = chemistry.services(visit);
        if (planned.size() != wanted.choices().size()) {
            throw new Outdated();
        }
        List<ServiceDecision> decided = new ArrayList<>();
        for (int place = 0; place < planned.size(); place++) {
            decided.add(decided(visit, by, wanted, now, place, planned.get(place)));
        }
        return decided;
    }

    private ServiceDecision decided(Visit visit, Staff by, Wanted wanted, Assessed.Now now, int place, Service service) {
        Choice choice = wanted.choices().get(place);
        List<Gate.Weighing> on = gate.on(visit, now, service);
        Weight standing = Gate.standing(on);
        List<Gate.Weighing> inTheWay = choice.verdict().goesAhead() ? on.stream().filter(Gate.Weighing::inTheWay).toList() : List.of();
        allowed(by, wanted, inTheWay);
        if (choice.verdict() == Verdict.PROCEED && standing.compareTo(Weight.RESTRICTS) >= 0
            || choice.verdict() == Verdict.PROCEED_WITH_CHANGES && choice.conditions().isBlank()) {
            throw new NotReady("what restricts goes ahead only with conditions, written down");
        }
        Optional<String> booked = AdaptedService.first(visit.id, place).map(a -> a.fromService).filter(id -> !id.equals(service.id()));
        return new ServiceDecision(service.id(), service.stepIds(), booked, standing, choice.verdict(), choice.until(), choice.conditions(),
            choice.alternative(), inTheWay.stream().map(w -> new Against(w.finding().ruleId(), w.weight())).toList());
    }

    private static void allowed(Staff by, Wanted wanted, List<Gate.Weighing> inTheWay) {
        if (inTheWay.stream().anyMatch(Gate.Weighing::lasting)) {
            throw new NobodyMay();
        }
        boolean taken = by.role == Role.OWNER && wanted.reason().filter(why -> !why.isBlank()).isPresent();
        if (!inTheWay.isEmpty() && !taken) {
            throw new OnlyTheOwnerMay();
        }
    }

    private KeptDecision keep(Visit visit, Staff by, Wanted wanted, List<ServiceDecision> services, Gate.Open open) {
        KeptDecision decision = new KeptDecision();
        decision.id = UUID.randomUUID();
        decision.visitId = visit.id;
        decision.clientId = visit.client.id;
        decision.versionNo = latest(visit.id).map(earlier -> earlier.versionNo).orElse(0) + 1;
        decision.submission = wanted.submission();
        decision.assessmentId = wanted.assessmentId();
        decision.consentId = open.signature().consent().map(c -> c.id).orElse(null);
        decision.decidedAt = clock.instant();
        decision.decidedBy = by.id;
        var body = new KeptDecision.Body(services, wanted.reason().orElse(""), Staff.atWork().size() == 1);
        decision.body = vault.seal(visit.client.id, decision.place(), bytes(body));
        decision.persist();
        return decision;
    }

    /** Plans another service or other steps in a place of the visit; the client has not agreed to that yet. */
    public void adapt(UUID visitId, Staff by, List<Booked> planned) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
            List<Booked> before = planned(visit);
            if (before.size() != planned.size()) {
                throw new Outdated();
            }
            for (int place = 0; place < planned.size(); place++) {
                if (!before.get(place).equals(planned.get(place))) {
                    new AdaptedService(visitId, place, before.get(place), planned.get(place), by.id, clock.instant()).persist();
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
        return KeptDecision.submitted(submission).filter(made -> made.visitId.equals(visitId)).isPresent();
    }

    /** Every decision of the visit, newest first. */
    public List<KeptDecision> all(UUID visitId) {
        return KeptDecision.ofVisit(visitId);
    }

    public KeptDecision.Body read(KeptDecision decision) {
        try {
            byte[] plain = vault.open(decision.clientId, decision.place(), decision.body);
            return json.readValue(new String(plain, StandardCharsets.UTF_8), KeptDecision.Body.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the decision %s cannot be read".formatted(decision.id), e);
        }
    }

    private byte[] bytes(KeptDecision.Body body) {
        try {
            return json.writeValueAsString(body).getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a decision has no JSON form", e);
        }
    }

    /** The page was made on an assessment that is no longer the newest. */
    public static final class Outdated extends IllegalStateException {
        Outdated() {
            super("a newer assessment holds: look at what changed, then decide");
        }
    }

    /** Something must be done before the service can go ahead. */
    public static final class NotReady extends IllegalStateException {
        NotReady(String what) {
            super("before it can go ahead: " + what);
        }
    }

    /** A finding that nobody can go against. */
    public static final class NobodyMay extends IllegalStateException {
        NobodyMay() {
            super("nobody can go against this finding");
        }
    }

    /** Findings in the way that only the owner can go against, with a reason. */
    public static final class OnlyTheOwnerMay extends IllegalStateException {
        OnlyTheOwnerMay() {
            super("only the owner can go against this, with a reason");
        }
    }
}
