package foretress.skintest;

import foretress.intake.NextClosing;
import foretress.intake.Renewal;
import foretress.ledger.Ledger;
import foretress.picture.RedrawnPhoto;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.vault.SealedJson;
import foretress.vault.Vault;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Keeps what the client tells and what staff read, and what follows from it at once: a reaction stops every visit ahead and is
 * somebody's by name until they have spoken to the client. Once a method returns, it is on the device.
 */
@Singleton
class LookRecording {
    private final Renewal renewal;
    private final Visits visits;
    private final Tasks tasks;
    private final Vault vault;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    LookRecording(Renewal renewal, Visits visits, Tasks tasks, Vault vault, SealedJson sealed, Ledger ledger,
        Clock clock) {
        this.renewal = renewal;
        this.visits = visits;
        this.tasks = tasks;
        this.vault = vault;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** What the client says; the same form twice is one report. */
    UUID report(UUID submission, UUID testId, SkinLook look) {
        return keep(submission, testId, look, Optional.empty());
    }

    /**
     * What a member of staff sees. A reaction is a reaction at any hour.
     *
     * @throws TooEarly when nothing is seen before the wait is over: that proves nothing, and is not kept
     */
    UUID read(UUID submission, UUID testId, SkinLook look, UUID staff) {
        return keep(submission, testId, look, Optional.of(staff));
    }

    private UUID keep(UUID submission, UUID testId, SkinLook look, Optional<UUID> staff) {
        return QuarkusTransaction.requiringNew()
            .call(() -> SkinTestEntry.submitted(submission).map(earlier -> earlier.id())
                .orElseGet(() -> fresh(submission, TestApplied.byId(testId).orElseThrow(), look, staff)));
    }

    /** The wait is not over. */
    static final class TooEarly extends RuntimeException {
        private final Instant from;

        TooEarly(Instant from) {
            super("nothing seen counts from %s on".formatted(from));
            this.from = from;
        }

        /** From when on a reading counts. */
        Instant from() {
            return from;
        }
    }

    private UUID fresh(UUID submission, TestApplied test, SkinLook look, Optional<UUID> staff) {
        if (provesNothing(test, look, staff, clock.instant())) {
            throw new TooEarly(test.readableFrom());
        }
        var entry = new SkinTestEntry(submission, test, staff, clock.instant(),
            sealed.sealing(test.clientId(), look));
        entry.persist();
        ledger.note(staff.map(UUID::toString).orElse("client"),
            staff.isPresent() ? "skin test read" : "skin test reported on", test.id().toString());
        follow(test, look, staff);
        return entry.id();
    }

    /** Staff see nothing before the wait is over. */
    static boolean provesNothing(TestApplied test, SkinLook look, Optional<UUID> staff, Instant now) {
        return staff.isPresent() && look.nothing() && now.isBefore(test.readableFrom());
    }

    private void follow(TestApplied test, SkinLook look, Optional<UUID> staff) {
        Visit visit = Visit.findById(test.visitId());
        tasks.kept(visit.id, Task.Kind.ASK_AFTER, staff.orElse(visit.stylistId));
        if (!look.nothing()) {
            visits.undecide(test.clientId());
        }
        if (!look.nothing() && staff.isEmpty()) {
            promise(visit, look);
        }
        renewal.ofClient(test.clientId());
    }

    private void promise(Visit visit, SkinLook look) {
        Instant now = clock.instant();
        tasks.promise(visit, Task.Kind.SPEAK_AT_ONCE,
            Staff.byId(visit.stylistId).filter(one -> one.active).map(one -> one.id),
            look.urgent() ? now : NextClosing.after(now, Salon.the()));
    }

    /** The owner marks a slip of the finger. It stays on file with the reason, and counts no more. */
    boolean inError(UUID entryId, String reason, UUID owner) {
        return QuarkusTransaction.requiringNew().call(() -> SkinTestEntry.byId(entryId).filter(SkinTestEntry::counts)
            .map(entry -> mark(entry, reason, owner)).isPresent());
    }

    private SkinTestEntry mark(SkinTestEntry entry, String reason, UUID owner) {
        entry.wasInError(owner, clock.instant(),
            vault.sealing(entry.clientId(), reason.getBytes(StandardCharsets.UTF_8)));
        entry.persist();
        ledger.note(owner.toString(), "skin test entry marked as entered in error", entry.id().toString());
        renewal.ofClient(entry.clientId());
        return entry;
    }

    /** A picture with a report. */
    void photo(SkinTestEntry entry, RedrawnPhoto drawn) {
        QuarkusTransaction.requiringNew().run(() -> {
            new Photo(entry, clock.instant(), vault.sealing(entry.clientId(), drawn.jpeg()))
                .persist();
            ledger.note("client", "photo of a skin test sent", entry.testId().toString());
        });
    }
}
