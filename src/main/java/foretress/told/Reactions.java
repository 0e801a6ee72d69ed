package foretress.told;

import foretress.intake.NextClosing;
import foretress.intake.NoticeConsent;
import foretress.intake.Renewal;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.vault.SealedJson;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import jakarta.persistence.LockModeType;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Keeps what a client tells of a reaction, and what follows from it at once: every visit ahead is stopped, and it is somebody's by name
 * until they have spoken to the client. Call it outside a transaction; once a method returns, it is on the device.
 */
@Singleton
public class Reactions {
    private final Visits visits;
    private final Tasks tasks;
    private final Renewal renewal;
    private final NoticeConsent notices;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    Reactions(Visits visits, Tasks tasks, Renewal renewal, NoticeConsent notices, SealedJson sealed, Ledger ledger,
        Clock clock) {
        this.visits = visits;
        this.tasks = tasks;
        this.renewal = renewal;
        this.notices = notices;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** Nothing about health is asked before the notice was agreed to, whatever became of the visit since. */
    boolean mayBeTold(Visit visit) {
        return visit.state.hasAnswers() || notices.given(visit.id);
    }

    /** The same form twice is one telling. */
    void tell(UUID submission, UUID visitId, Telling telling) {
        QuarkusTransaction.requiringNew().run(() -> {
            Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
            if (ToldReaction.submitted(submission).isEmpty()) {
                keep(submission, visit, telling);
            }
        });
    }

    private void keep(UUID submission, Visit visit, Telling telling) {
        Instant now = clock.instant();
        var told = new ToldReaction(visit, submission, now, sealed.sealing(visit.client.id, telling));
        told.persistAndFlush();
        ledger.note("client", "reaction told of", told.id().toString());
        tasks.promise(visit, Task.Kind.SPEAK_AT_ONCE,
            Staff.byId(visit.stylistId).filter(one -> one.active).map(one -> one.id),
            telling.urgent() ? now : NextClosing.after(now, Salon.the()));
        visits.undecide(visit.client.id);
        renewal.ofClient(visit.client.id);
    }

    /** All of a client, newest first; those struck out are among them and say so. */
    public List<ToldReaction> of(UUID clientId) {
        return ToldReaction.ofClient(clientId);
    }

    Optional<ToldReaction> newest(UUID visitId) {
        return ToldReaction.newest(visitId);
    }

    public Telling read(ToldReaction told) {
        return sealed.open(told, Telling.class);
    }

    String struckWhy(ToldReaction told) {
        return told.struck() ? sealed.open(told.clientId(), told.place("struck_why"), told.struckWhy(), String.class)
            : "";
    }

    /** What the owner found to have nothing to do with what is used here stays on file with the reason, and weighs no more. */
    void strike(UUID id, String why, UUID owner) {
        QuarkusTransaction.requiringNew().run(() -> {
            ToldReaction told = ToldReaction.findById(id, LockModeType.PESSIMISTIC_WRITE);
            if (!told.struck()) {
                told.strike(owner, clock.instant(), sealed.sealing(told.clientId(), why));
                told.persistAndFlush();
                ledger.note(owner.toString(), "told reaction struck out", told.id().toString());
                renewal.ofClient(Visit.<Visit>findById(told.visitId()).client.id);
            }
        });
    }
}
