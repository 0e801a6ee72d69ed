package foretress.closing;

import foretress.decision.Decisions;
import foretress.intake.Renewal;
import foretress.ledger.Ledger;
import foretress.salon.Staff;
import foretress.vault.SealedJson;
import foretress.visit.State;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Closes visits and reads back what was done. */
@ApplicationScoped
public class Closings {
    private final Decisions decisions;
    private final SealedJson sealed;
    private final Renewal renewal;
    private final Ledger ledger;
    private final Clock clock;

    Closings(Decisions decisions, SealedJson sealed, Renewal renewal, Ledger ledger, Clock clock) {
        this.decisions = decisions;
        this.sealed = sealed;
        this.renewal = renewal;
        this.ledger = ledger;
        this.clock = clock;
    }

    /**
     * Closes the visit, or puts right what was kept: the same form twice is one. Coming visits know of it at once. Call it outside a
     * transaction.
     *
     * @param basedOn the version the form was filled in from; 0 where the visit was not closed yet
     * @return false when another version was kept meanwhile: nothing was kept now
     * @throws NotDecided when a service was done that nobody decided may go ahead
     */
    public boolean keep(UUID visitId, Staff by, UUID submission, int basedOn, Closing closing) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Visit visit = Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
            List<KeptClosing> versions = KeptClosing.versions(visitId);
            if (versions.stream().anyMatch(one -> one.submission().equals(submission))) {
                return true;
            }
            return versions.size() == basedOn && keep(visit, by, submission, basedOn + 1, closing);
        });
    }

    private boolean keep(Visit visit, Staff by, UUID submission, int versionNo, Closing closing) {
        boolean first = versionNo == 1;
        if (visit.state != (first ? State.DECIDED : State.CLOSED)
            || !closing.done().stream().allMatch(done -> allowed(visit.id, done.serviceId()))) {
            throw new NotDecided();
        }
        write(visit, by, submission, versionNo, closing);
        if (first) {
            visit.moveTo(State.CLOSED);
        }
        ledger.note(by.id.toString(), first ? "visit closed" : "closing corrected", visit.id.toString());
        renewal.ofClient(visit.client.id);
        return true;
    }

    private boolean allowed(UUID visitId, String serviceId) {
        return decisions.latest(visitId).map(decisions::read).stream().flatMap(body -> body.services().stream())
            .anyMatch(s -> s.serviceId().equals(serviceId) && s.verdict().goesAhead());
    }

    private void write(Visit visit, Staff by, UUID submission, int versionNo, Closing closing) {
        new KeptClosing(visit, versionNo, submission, by.id, clock.instant(),
            sealed.sealing(visit.client.id, closing)).persistAndFlush();
    }

    public Optional<KeptClosing> of(UUID visitId) {
        return KeptClosing.ofVisit(visitId);
    }

    /** Those that hold, by visit, of everything this person came for. */
    public Map<UUID, KeptClosing> ofClient(UUID clientId) {
        return KeptClosing.ofClient(clientId).stream()
            .collect(Collectors.toMap(KeptClosing::visitId, Function.identity()));
    }

    /** Has every version of each of these visits at hand. */
    public void ready(Collection<UUID> visits) {
        KeptClosing.ready(visits);
    }

    /** Newest first. */
    public List<KeptClosing> versions(UUID visitId) {
        return KeptClosing.versions(visitId);
    }

    public Closing read(KeptClosing kept) {
        return sealed.open(kept, Closing.class);
    }

    /** What was done was not what was decided. */
    public static final class NotDecided extends IllegalStateException {
        NotDecided() {
            super("only what was decided to go ahead can be recorded as done");
        }
    }
}
