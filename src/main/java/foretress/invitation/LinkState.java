package foretress.invitation;

import java.time.Instant;

/** What has become of the newest link of a visit. */
public record LinkState(State state, Instant issuedAt, Instant expiresAt) {
    public enum State { LIVE, LOCKED, REVOKED, EXPIRED, OVER }
}
