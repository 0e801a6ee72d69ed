package foretress.told;

import foretress.ledger.Ledger;
import foretress.vault.SealedJson;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps complaints, and what the owner does about them. Call it outside a transaction; once a method returns, it is on the device. */
@Singleton
public class ComplaintsMade {
    private final Tasks tasks;
    private final ComplaintLetters letters;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    ComplaintsMade(Tasks tasks, ComplaintLetters letters, SealedJson sealed, Ledger ledger, Clock clock) {
        this.tasks = tasks;
        this.letters = letters;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** @param language the tag of the language it was written in */
    record Words(String words, String language) {}

    /** The same form twice is one complaint. */
    void make(UUID submission, UUID visitId, Words words) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            if (ComplaintMade.submitted(submission).isEmpty()) {
                keep(submission, visit, words);
            }
        });
    }

    private void keep(UUID submission, Visit visit, Words words) {
        var made = new ComplaintMade(visit, submission, clock.instant(), sealed.sealing(visit.client.id, words));
        made.persistAndFlush();
        ledger.note("client", "complaint made", made.id().toString());
        tasks.promise(visit, Task.Kind.COMPLAINT, Optional.empty(), end(made, visit));
        letters.toOwner(visit);
    }

    /** The end of the last day. */
    private static Instant end(ComplaintMade made, Visit visit) {
        return made.acknowledgeBy().plusDays(1).atStartOfDay(visit.zone()).toInstant().minusSeconds(60);
    }

    Optional<ComplaintMade> find(UUID id) {
        return ComplaintMade.findByIdOptional(id);
    }

    /** Newest first. */
    List<ComplaintMade> ofVisit(UUID visitId) {
        return ComplaintMade.ofVisit(visitId);
    }

    /** The same, where more than one visit of a client is looked at. */
    List<ComplaintMade> ofVisit(Visit visit) {
        return of(visit.client.id).stream().filter(made -> made.visitId().equals(visit.id)).toList();
    }

    /** All of a client, newest first. */
    public List<ComplaintMade> of(UUID clientId) {
        return ComplaintMade.ofClient(clientId);
    }

    /** Those that nobody answered yet, the most pressing first. */
    public List<ComplaintMade> unanswered() {
        return ComplaintMade.unanswered();
    }

    Words read(ComplaintMade made) {
        return sealed.open(made, Words.class);
    }

    String answer(ComplaintMade made) {
        return made.answeredAt().isEmpty() ? ""
            : sealed.open(made.clientId(), made.place("answer"), made.answer(), String.class);
    }

    /** The owner says that the salon has it; said twice it is said once. */
    void acknowledge(UUID id, UUID owner) {
        QuarkusTransaction.requiringNew().run(() -> {
            ComplaintMade made = locked(id);
            if (made.acknowledgedAt().isEmpty()) {
                made.acknowledge(owner, clock.instant());
                settle(made, owner, "complaint acknowledged");
            }
        });
    }

    /** What came of it, as the client reads it; the first answer stays. */
    void answer(UUID id, String words, UUID owner) {
        QuarkusTransaction.requiringNew().run(() -> {
            ComplaintMade made = locked(id);
            if (made.answeredAt().isEmpty()) {
                made.answer(owner, clock.instant(), sealed.sealing(made.clientId(), words));
                settle(made, owner, "complaint answered");
            }
        });
    }

    private static ComplaintMade locked(UUID id) {
        return ComplaintMade.findById(id, LockModeType.PESSIMISTIC_WRITE);
    }

    /** The promise is kept once nothing of this visit waits to be acknowledged; what still waits is promised anew. */
    private void settle(ComplaintMade made, UUID owner, String what) {
        made.persistAndFlush();
        ledger.note(owner.toString(), what, made.id().toString());
        tasks.kept(made.visitId(), Task.Kind.COMPLAINT, owner);
        Visit visit = Visit.findById(made.visitId());
        letters.toClient(visit);
        ofVisit(visit.id).stream().filter(other -> other.acknowledgedAt().isEmpty())
            .min(Comparator.comparing(ComplaintMade::acknowledgeBy))
            .ifPresent(waits -> tasks.promise(visit, Task.Kind.COMPLAINT, Optional.empty(), end(waits, visit)));
    }
}
