package foretress.rights;

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
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Keeps what clients ask about their data, and what the owner answers. Once a method returns, it is kept. */
@Singleton
class Requests {
    private final Tasks tasks;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    Requests(Tasks tasks, SealedJson sealed, Ledger ledger, Clock clock) {
        this.tasks = tasks;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** @param language the tag of the language it was written in */
    record Words(String words, String language) {}

    /** The same form twice is one request. */
    void make(UUID submission, UUID visitId, RequestKind kind, Words words) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            if (RightsRequest.submitted(submission).isEmpty()) {
                var made = new RightsRequest(visit, submission, kind, clock.instant(),
                    sealed.sealing(visit.client.id, words));
                made.persistAndFlush();
                ledger.note("client", "request about data made", made.id().toString());
                tasks.promise(visit, Task.Kind.REQUEST, Optional.empty(), end(made.dueOn(), visit));
            }
        });
    }

    private static Instant end(LocalDate due, Visit visit) {
        return due.plusDays(1).atStartOfDay(visit.zone()).toInstant().minusSeconds(60);
    }

    Optional<RightsRequest> find(UUID id) {
        return RightsRequest.findByIdOptional(id);
    }

    List<RightsRequest> of(UUID clientId) {
        return RightsRequest.ofClient(clientId);
    }

    List<RightsRequest> open() {
        return RightsRequest.open();
    }

    Words read(RightsRequest made) {
        return sealed.open(made, Words.class);
    }

    String answer(RightsRequest made) {
        return made.closedAt().isEmpty() ? ""
            : sealed.open(made.clientId(), made.place("answer"), made.answer(), String.class);
    }

    /** What came of it, as the client reads it; the first answer stays. */
    void close(UUID id, String answer, UUID owner) {
        QuarkusTransaction.requiringNew().run(() -> {
            RightsRequest made = RightsRequest.findById(id, LockModeType.PESSIMISTIC_WRITE);
            if (made.closedAt().isEmpty()) {
                made.close(owner, clock.instant(), sealed.sealing(made.clientId(), answer));
                made.persistAndFlush();
                ledger.note(owner.toString(), "request about data answered", made.id().toString());
                settle(made, owner);
            }
        });
    }

    /** The promise is kept once nothing of this visit waits; what still waits is promised anew. */
    private void settle(RightsRequest made, UUID owner) {
        tasks.kept(made.visitId(), Task.Kind.REQUEST, owner);
        Visit visit = Visit.findById(made.visitId());
        of(made.clientId()).stream()
            .filter(other -> other.visitId().equals(visit.id) && other.closedAt().isEmpty())
            .min(Comparator.comparing(RightsRequest::dueOn))
            .ifPresent(waits -> tasks.promise(visit, Task.Kind.REQUEST, Optional.empty(), end(waits.dueOn(), visit)));
    }
}
