package foretress.visit;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** A promise made to a client: whose it is and by when. It stays open until that person says it is done. */
@Entity
@Table(name = "task")
public class Task extends Stored {
    /** What was promised, never why. */
    public enum Kind {
        /** Telephone the client. */
        CALL,
        /** The client has told of something that cannot wait: speak to them at once. */
        SPEAK_AT_ONCE,
        /** Nobody has heard from the client in time: ask after them. */
        ASK_AFTER,
        /** Too many wrong birth dates: speak to the client, then open the link again. */
        UNLOCK_LINK,
        /** The client gave the birth date: ask and confirm it. */
        CONFIRM_BIRTH_DATE,
        /** The client complained: the owner confirms that the salon has it. */
        COMPLAINT,
        /** The client asks about her data: the owner answers. */
        REQUEST,
        /** The client took consent back once the visit was over: everybody who works with her answers knows. */
        TAKEN_BACK
    }

    @ManyToOne(fetch = FetchType.EAGER, optional = false)
    @JoinColumn(name = "visit_id") public Visit visit;
    /** Sealed: that somebody must be called at once tells of an answer. */
    @Column(name = "kind", columnDefinition = "text") private String sealedKind;
    @Column(name = "open_as") private String openAs;
    @Column(name = "owner_id") private UUID ownerId;
    @Column(name = "due_at") public Instant dueAt;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "acknowledged_at") private Instant acknowledgedAt;
    @Column(name = "acknowledged_by") private UUID acknowledgedBy;
    @Version private int version;

    protected Task() {}

    Task(Visit visit, Kind kind, Optional<UUID> owner, Instant due, Instant now) {
        super(visit, kind, due, now);
        this.visit = visit;
        this.sealedKind = VaultAccess.vault().sealWord(visit.keyOf, place("kind"), kind.name());
        this.openAs = openAs(visit, kind);
        this.ownerId = owner.orElse(null);
        this.dueAt = due;
        this.madeAt = now;
    }

    /** Keeps one open promise of a kind for a visit, without telling which. */
    static String openAs(Visit visit, Kind kind) {
        return VaultAccess.vault().code(visit.keyOf, "task.open_as", visit.id + " " + kind);
    }

    public Kind kind() {
        return Kind.valueOf(VaultAccess.vault().openWord(visit.keyOf, place("kind"), sealedKind));
    }

    /** The member of staff who promised; empty when it is the whole desk's. */
    public Optional<UUID> owner() {
        return Optional.ofNullable(ownerId);
    }

    public Optional<Instant> acknowledged() {
        return Optional.ofNullable(acknowledgedAt);
    }

    /** Once done it stays done; saying so again changes nothing. */
    void acknowledge(UUID staffId, Instant now) {
        if (acknowledgedAt != null) {
            return;
        }
        acknowledgedAt = now;
        acknowledgedBy = staffId;
        openAs = null;
    }
}
