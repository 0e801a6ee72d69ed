package foretress.ledger;

import foretress.running.AuditEvent;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.event.Event;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Singleton;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;

/**
 * The audit chain: who did what to which record, and when. An entry and the act it tells of are committed together or not at all.
 * What a client said, passwords and links never belong into it.
 */
@Singleton
public class Ledger {
    private final Chain chain;
    private final Pseudonyms pseudonyms;
    private final DataSource store;
    private final Clock clock;
    private final Event<AuditEvent> happened;
    private final Event<Reading> reads;
    private final Readings noted = new Readings();

    Ledger(Chain chain, Pseudonyms pseudonyms, DataSource store, Clock clock, Event<AuditEvent> happened,
        Event<Reading> reads) {
        this.reads = reads;
        this.chain = chain;
        this.pseudonyms = pseudonyms;
        this.store = store;
        this.clock = clock;
        this.happened = happened;
    }

    /**
     * @param actor who did it: a staff id, "client", "nobody" or "server"
     * @param what the act, in a few fixed words
     * @param subject the record it was done to, kept as a keyed pseudonym only; empty for none
     */
    public void note(String actor, String what, String subject) {
        happened.fire(new AuditEvent(actor, what, subject));
    }

    /**
     * A page about the record is read. The same page read again by the same person within {@link Readings#SPAN} of its entry makes no entry
     * of its own: one says that it was read then, and perhaps again within that time.
     */
    public void read(String actor, String what, String subject) {
        var reading = new Reading(actor, what, subject, clock.instant());
        if (!noted.covers(reading)) {
            note(actor, what, subject);
            reads.fire(reading);
        }
    }

    /** Only what stands in the chain covers anything. */
    void remember(@Observes(during = TransactionPhase.AFTER_SUCCESS) Reading reading) {
        noted.add(reading);
    }

    /** Just before the commit, so that the chain's head is locked for a moment only; outside a transaction at once, in its own. */
    void keep(@Observes(during = TransactionPhase.BEFORE_COMPLETION) AuditEvent act) {
        QuarkusTransaction.joiningExisting().run(() -> appendOrRollBack(act));
    }

    /** The container swallows what such an observer throws, so the refusal must be marked on the transaction itself. */
    private void appendOrRollBack(AuditEvent act) {
        try {
            append(act);
        } catch (RuntimeException e) {
            QuarkusTransaction.setRollbackOnly();
            throw e;
        }
    }

    private void append(AuditEvent act) {
        try (Connection connection = store.getConnection()) {
            chain.append(connection, clock.instant(), act.actor(), act.what(), pseudonyms.of(act.subject()));
        } catch (SQLException e) {
            throw new IllegalStateException("the audit chain could not be written, so the act is refused", e);
        }
    }

    /** The number of the first entry that is missing or not as it was written; nothing when the chain holds. */
    public Optional<Long> firstBroken() {
        return check(List.of()).firstBroken();
    }

    /** Reads the whole chain and holds it against these slips, so only where somebody asks for it. */
    public TrailVerdict check(List<Slip> slips) {
        try (Connection connection = store.getConnection()) {
            return Chain.check(connection, slips);
        } catch (SQLException e) {
            throw new IllegalStateException("the audit chain could not be read", e);
        }
    }
}
