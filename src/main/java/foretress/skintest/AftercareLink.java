package foretress.skintest;

import foretress.knowledge.Sha256;
import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** A link on which a client tells how the skin looks. 256 random bits; only the hash is kept. */
@Entity
@Table(name = "aftercare_link")
class AftercareLink extends Stored {
    @Column(name = "test_id") private UUID testId;
    @Column(name = "token_hash", length = 64) private String tokenHash;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "expires_at") private Instant expiresAt;

    protected AftercareLink() {}

    /** @param token what the link ends in; it is not kept */
    AftercareLink(TestApplied test, String token, Instant now, Instant expires) {
        super(test, token, now, expires);
        this.testId = test.id();
        this.tokenHash = Sha256.of(token);
        this.madeAt = now;
        this.expiresAt = ending(now, expires);
    }

    /** The live link behind what was presented. */
    static Optional<AftercareLink> behind(String token, Instant now) {
        return AftercareLink.<AftercareLink>find("tokenHash", Sha256.of(token)).firstResultOptional()
            .filter(link -> now.isBefore(link.expiresAt));
    }

    UUID testId() {
        return testId;
    }
}
