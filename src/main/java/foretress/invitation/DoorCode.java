package foretress.invitation;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/** A one-use code that shows a second browser what the first one answered. */
@Entity
@Table(name = "door_code")
class DoorCode extends Stored {
    static final Duration LIFE = Duration.ofMinutes(15);
    static final int TRIES = 5;

    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "code_hash") String codeHash;
    private boolean mailed;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "expires_at") private Instant expiresAt;
    private int tries;
    @Column(name = "used_at") private Instant usedAt;

    protected DoorCode() {}

    DoorCode(UUID visitId, String code, boolean mailed, Instant now) {
        super(visitId, code, now);
        this.visitId = visitId;
        this.codeHash = hash(id, code);
        this.mailed = mailed;
        this.madeAt = now;
        this.expiresAt = now.plus(LIFE);
    }

    /** Bound to the row, so that equal codes of two visits do not look alike. */
    static String hash(UUID id, String code) {
        return Token.hash(id + ":" + code);
    }
}
