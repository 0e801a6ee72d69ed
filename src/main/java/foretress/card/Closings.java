package foretress.card;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import foretress.ledger.Ledger;
import foretress.salon.Staff;
import foretress.vault.Durable;
import foretress.vault.Vault;
import foretress.visit.State;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;

/** Closes visits and reads back what was done. */
@Singleton
public class Closings {
    private final Decisions decisions;
    private final Vault vault;
    private final ObjectMapper json;
    private final Durable durable;
    private final Ledger ledger;
    private final Clock clock;

    Closings(Decisions decisions, Vault vault, ObjectMapper json, Durable durable, Ledger ledger, Clock clock) {
        this.decisions = decisions;
        this.vault = vault;
        this.json = json;
        this.durable = durable;
        this.ledger = ledger;
        this.clock = clock;
    }

    /**
     * Closes the visit; the same again changes nothing. Call it outside a transaction.
     *
     * @throws NotDecided when a service was done that nobody decided may go ahead
     */
    public void close(UUID visitId, Staff by, UUID submission, Closing closing) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.<Visit>find("id", visitId).withLock(LockModeType.PESSIMISTIC_WRITE).singleResult();
            if (KeptClosing.ofVisit(visitId).isPresent()) {
                return;
            }
            if (visit.state != State.DECIDED || !closing.done().stream().allMatch(done -> allowed(visitId, done.serviceId()))) {
                throw new NotDecided();
            }
            keep(visit, by, submission, closing);
            visit.moveTo(State.CLOSED);
            ledger.note(by.id.toString(), "visit closed", visitId.toString());
        });
        durable.force();
    }

    private boolean allowed(UUID visitId, String serviceId) {
        return decisions.latest(visitId).map(decisions::read).stream().flatMap(body -> body.services().stream())
            .anyMatch(s -> s.serviceId().equals(serviceId) && s.verdict().goesAhead());
    }

    private void keep(Visit visit, Staff by, UUID submission, Closing closing) {
        KeptClosing kept = new KeptClosing();
        kept.id = UUID.randomUUID();
        kept.visitId = visit.id;
        kept.clientId = visit.client.id;
        kept.submission = submission;
        kept.closedAt = clock.instant();
        kept.closedBy = by.id;
        try {
            kept.body = vault.seal(visit.client.id, kept.place(), json.writeValueAsString(closing).getBytes(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a closing has no JSON form", e);
        }
        kept.persist();
    }

    public Optional<KeptClosing> of(UUID visitId) {
        return KeptClosing.ofVisit(visitId);
    }

    public Closing read(KeptClosing kept) {
        try {
            return json.readValue(new String(vault.open(kept.clientId, kept.place(), kept.body), StandardCharsets.UTF_8), Closing.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the closing %s cannot be read".formatted(kept.id), e);
        }
    }

    /** What was done was not what was decided. */
    public static final class NotDecided extends IllegalStateException {
        NotDecided() {
            super("only what was decided to go ahead can be recorded as done");
        }
    }
}
