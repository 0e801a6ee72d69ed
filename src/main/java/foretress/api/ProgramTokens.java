package foretress.api;

import foretress.knowledge.Sha256;
import foretress.ledger.Ledger;
import foretress.web.RandomText;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Pattern;

/** Makes, recognises and revokes the tokens of programs. */
@Singleton
class ProgramTokens {
    /** Told apart by programs that look for secrets in places where none should be. */
    static final String PREFIX = "ftr_";
    /** More living tokens than this is a mistake, not a salon. */
    static final int MOST_ALIVE = 50;
    private static final Pattern FORM = Pattern.compile(PREFIX + "[A-Za-z0-9_-]{43}");

    private final Ledger ledger;
    private final Clock clock;

    ProgramTokens(Ledger ledger, Clock clock) {
        this.ledger = ledger;
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
            var token = new ProgramToken(name, scopes, Sha256.of(secret), lasts, madeBy, clock.instant());
            token.persist();
            ledger.note(madeBy.toString(), "made a program's token", token.id.toString());
        });
        return secret;
    }

    private static String fresh() {
        return PREFIX + RandomText.fresh();
    }

    /** The token that was presented, if it is one of ours and alive; the day of its use is noted. */
    Optional<ProgramToken> recognise(String presented) {
        if (!FORM.matcher(presented).matches()) {
            return Optional.empty();
        }
        return QuarkusTransaction.requiringNew().call(() -> {
            Optional<ProgramToken> token =
                ProgramToken.byHash(Sha256.of(presented)).filter(t -> t.isAlive(clock.instant()));
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
        return QuarkusTransaction.requiringNew().call(() -> {
            Optional<ProgramToken> token = ProgramToken.findByIdOptional(id);
            token.filter(t -> !t.isRevoked()).ifPresent(t -> {
                t.revoke(clock.instant());
                ledger.note(by.toString(), "revoked a program's token", id.toString());
            });
            return token.isPresent();
        });
    }

    List<ProgramToken> all() {
        return ProgramToken.all();
    }

    List<ProgramToken> alive() {
        return all().stream().filter(t -> t.isAlive(clock.instant())).toList();
    }
}
