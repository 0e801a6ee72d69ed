package foretress.owner;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import foretress.closing.Closing;
import foretress.closing.Closings;
import foretress.closing.KeptClosing;
import foretress.closing.StrandTrial;
import foretress.consent.Consents;
import foretress.decision.Decisions;
import foretress.decision.KeptDecision;
import foretress.decision.ServiceDecision;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.KeptAssessment;
import foretress.vault.Vault;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.inject.Singleton;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the owner must be able to see of a stretch of time: work that was done without what it needed. A fixed number of reads, however many visits. */
@Singleton
public class Oversight {
    private static final String STRAND_TEST = "strand-test";

    /**
     * A visit that was closed.
     *
     * @param untested ids of the tests still demanded by the findings that were decided on
     * @param consented the client had signed before it was decided, and has not taken it back
     * @param readable what was kept of it could be opened; if not, nothing is known of its tests
     */
    public record Closed(Visit visit, Instant at, List<String> untested, boolean consented, boolean readable) {
        public boolean inOrder() {
            return untested.isEmpty() && consented && readable;
        }
    }

    /** Findings gone against: by whom, and why. */
    public record Override(Visit visit, Instant at, UUID by, List<String> rules, String reason) {}

    private final Visits visits;
    private final Consents consents;
    private final Closings closings;
    private final Decisions decisions;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Vault vault;

    Oversight(Visits visits, Consents consents, Closings closings, Decisions decisions, Assessments assessments,
        BookedChemistry chemistry, Vault vault) {
        this.visits = visits;
        this.consents = consents;
        this.closings = closings;
        this.decisions = decisions;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.vault = vault;
    }

    /** Every visit closed from the first moment up to but not at the second at which something was done, the newest first. */
    public List<Closed> closed(Instant from, Instant until) {
        Map<UUID, KeptClosing> last = new LinkedHashMap<>();
        KeptClosing.between(from, until).forEach(kept -> last.putIfAbsent(kept.visitId(), kept));
        Map<UUID, Visit> known = byId(last.keySet());
        Map<UUID, KeptDecision> decided = KeptDecision.ofVisits(last.keySet()).stream()
            .collect(Collectors.toMap(d -> d.visitId(), d -> d, (one, later) -> later));
        Map<UUID, KeptAssessment> grounds =
            KeptAssessment.byIds(decided.values().stream().map(d -> d.assessmentId()).toList()).stream()
                .collect(Collectors.toMap(a -> a.id(), Function.identity()));
        Map<UUID, Instant> signed = consents.firstSigned(last.keySet());
        vault.fetchKeys(last.values().stream().map(kept -> kept.clientId()).distinct().toList());
        return last.values().stream().flatMap(kept -> closed(kept, known.get(kept.visitId()),
            Optional.ofNullable(decided.get(kept.visitId())), grounds, signed).stream()).toList();
    }

    private Optional<Closed> closed(KeptClosing kept, Visit visit, Optional<KeptDecision> decision,
        Map<UUID, KeptAssessment> grounds, Map<UUID, Instant> signed) {
        boolean consented = visit.state != State.WITHDRAWN && decision.filter(d -> d.consentId().isPresent())
            .filter(d -> signed.containsKey(visit.id) && !signed.get(visit.id).isAfter(d.decidedAt())).isPresent();
        try {
            Closing closing = closings.read(kept);
            if (closing.done().isEmpty()) {
                return Optional.empty();
            }
            Optional<KeptAssessment> ground = decision.map(d -> grounds.get(d.assessmentId()));
            return Optional.of(new Closed(visit, kept.closedAt(),
                ground.map(g -> untested(visit, assessments.read(g), closing)).orElse(List.of()), consented,
                ground.isPresent()));
        } catch (RuntimeException damaged) {
            return Optional.of(new Closed(visit, kept.closedAt(), List.of(), consented, false));
        }
    }

    /** A finding that demands a test is gone once the test is on file; whatever still demands one was not tested. */
    private List<String> untested(Visit visit, Assessment assessment, Closing closing) {
        List<Service> booked = chemistry.services(visit);
        Set<String> tests =
            assessment.findings().stream().filter(f -> weighs(f, booked)).flatMap(f -> f.demands().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (closing.strandTest().filter(result -> result != StrandTrial.NOT_DONE).isPresent()) {
            tests.remove(STRAND_TEST);
        }
        return List.copyOf(tests);
    }

    private static boolean weighs(Finding finding, List<Service> services) {
        return services.stream().anyMatch(s -> finding.on(s) != Weight.NOTHING_FOUND);
    }

    /** Every decision of that time that went against a finding, the newest first. */
    public List<Override> overrides(Instant from, Instant until) {
        List<KeptDecision> made = KeptDecision.between(from, until);
        Map<UUID, Visit> known = byId(made.stream().map(d -> d.visitId()).collect(Collectors.toSet()));
        vault.fetchKeys(made.stream().map(d -> d.clientId()).distinct().toList());
        return made.stream().flatMap(d -> override(d, known.get(d.visitId()))).toList();
    }

    private Stream<Override> override(KeptDecision decision, Visit visit) {
        KeptDecision.Body body = decisions.read(decision);
        List<String> rules = body.services().stream().flatMap(s -> s.against().stream())
            .map(ServiceDecision.Against::ruleId).distinct().toList();
        return rules.isEmpty() && body.reason().isBlank() ? Stream.empty()
            : Stream.of(new Override(visit, decision.decidedAt(), decision.decidedBy(), rules, body.reason()));
    }

    private Map<UUID, Visit> byId(Set<UUID> ids) {
        return visits.byIds(ids).stream().collect(Collectors.toMap(v -> v.id, Function.identity()));
    }
}
