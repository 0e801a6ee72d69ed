package foretress.api;

import foretress.ledger.Ledger;
import foretress.vault.Durable;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Makes, recognises and revokes the tokens of programs. */
@Singleton
class ProgramTokens {
    /** Told apart by programs that look for secrets in places where none should be. */
    static final String PREFIX = "ftr_";
    /** More living tokens than this is a mistake, not a salon. */
    static final int MOST_ALIVE = 50;
    private static final int BYTES = 32;
    private static final Pattern FORM = Pattern.compile(PREFIX + "[A-Za-z0-9_-]{43}");
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Ledger ledger;
    private final Durable durable;
    private final Clock clock;

    ProgramTokens(Ledger ledger, Durable durable, Clock clock) {
        this.ledger = ledger;
        this.durable = durable;
        this.clock = clock;
    }

    /**
     * A token of 256 random bits, to be shown once.
     *
     * @param madeBy the owner's staff id
     */
    String make(String name, Set<Scope> scopes, Duration lasts, UUID madeBy) {
        String secret = fresh();
        QuarkusTransaction.requiringNew().run(() -> {
            ProgramToken token = new ProgramToken();
            token.id = UUID.randomUUID();
            token.name = name;
            token.scopes = scopes.stream().sorted().map(Scope::code).collect(Collectors.joining(" "));
            token.tokenSha256 = hash(secret);
            token.madeBy = madeBy;
            token.madeAt = clock.instant();
            token.expiresAt = token.madeAt.plus(lasts);
            token.persist();
            ledger.note(madeBy.toString(), "made a program's token", token.id.toString());
        });
        durable.force();
        return secret;
    }

    private static String fresh() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return PREFIX + Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** SHA-256 in hex; enough at this length of secret. */
    private static String hash(String secret) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    /** The token that was presented, if it is one of ours and alive; the day of its use is noted. */
    Optional<ProgramToken> recognise(String presented) {
        if (!FORM.matcher(presented).matches()) {
            return Optional.empty();
        }
        return QuarkusTransaction.requiringNew().call(() -> {
            Optional<ProgramToken> token = ProgramToken.byHash(hash(presented)).filter(t -> t.isAlive(clock.instant()));
            token.ifPresent(t -> used(t.id));
            return token;
        });
    }

    /** One row changed at most once a day, whoever else does so at the same moment. */
    private void used(UUID token) {
        LocalDate today = clock.instant().atZone(ZoneOffset.UTC).toLocalDate();
        ProgramToken.update("lastUsedOn = ?1 where id = ?2 and (lastUsedOn is null or lastUsedOn < ?1)", today, token);
    }

    /** Ends it at once; nothing happens to one that is over already. */
    boolean revoke(UUID id, UUID by) {
        boolean known = QuarkusTransaction.requiringNew().call(() -> {
            Optional<ProgramToken> token = ProgramToken.findByIdOptional(id);
            token.filter(t -> !t.isRevoked()).ifPresent(t -> {
                t.revokedAt = clock.instant();
                ledger.note(by.toString(), "revoked a program's token", id.toString());
            });
            return token.isPresent();
        });
        durable.force();
        return known;
    }

    List<ProgramToken> all() {
        return ProgramToken.all();
    }

    List<ProgramToken> alive() {
        return all().stream().filter(t -> t.isAlive(clock.instant())).toList();
    }
}
