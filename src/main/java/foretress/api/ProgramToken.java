package foretress.api;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** What lets one program in, for one purpose and for a time. Of the token itself only the hash is kept. */
@Entity
@Table(name = "program_token")
class ProgramToken extends Stored {
    @Column(columnDefinition = "text") String name;
    /** Codes of {@link Scope}, parted by a blank. */
    @Column(columnDefinition = "text") String scopes;
    @Column(name = "token_sha256", length = 64) String tokenSha256;
    @Column(name = "made_by") UUID madeBy;
    @Column(name = "made_at") Instant madeAt;
    @Column(name = "expires_at") Instant expiresAt;
    @Column(name = "revoked_at") Instant revokedAt;
    /** Only the day: enough to see that nobody uses it any more. */
    @Column(name = "last_used_on") private LocalDate lastUsedOn;
    @Version private int version;

    protected ProgramToken() {}

    ProgramToken(String name, Set<Scope> scopes, String tokenSha256, Duration lasts, UUID madeBy, Instant now) {
        super(name, tokenSha256, madeBy, now);
        if (scopes.isEmpty() || lasts.isNegative() || lasts.isZero()) {
            throw new IllegalArgumentException(
                "A program's token has something it is for, and a time to last.");
        }
        this.name = name;
        this.scopes = scopes.stream().sorted().map(Scope::code).collect(Collectors.joining(" "));
        this.tokenSha256 = tokenSha256;
        this.madeBy = madeBy;
        this.madeAt = now;
        this.expiresAt = now.plus(lasts);
    }

    /** Ends it at once. */
    void revoke(Instant now) {
        revokedAt = now;
    }

    static Optional<ProgramToken> byHash(String sha256) {
        return find("tokenSha256", sha256).firstResultOptional();
    }

    static List<ProgramToken> all() {
        return list("order by madeAt desc, name");
    }

    boolean isAlive(Instant now) {
        return revokedAt == null && now.isBefore(expiresAt);
    }

    boolean isFor(String scope) {
        return scope.isEmpty() || Arrays.asList(scopes.split(" ")).contains(scope);
    }

    Optional<LocalDate> lastUsedOn() {
        return Optional.ofNullable(lastUsedOn);
    }

    boolean isRevoked() {
        return revokedAt != null;
    }
}
