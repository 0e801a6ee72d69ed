package foretress.invitation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Links just made, so that the desk's screen and the printed slip can show the same one. In memory only and for a short
 * while: the store knows a link by its hash alone, so afterwards a fresh one has to be made.
 */
@ApplicationScoped
public class FreshLinks {
    static final Duration SHOWN = Duration.ofMinutes(15);

    private record Held(UUID visitId, UUID staffId, Token token, Instant until) {}

    private final Map<UUID, Held> held = new ConcurrentHashMap<>();
    private final Clock clock;

    FreshLinks(Clock clock) {
        this.clock = clock;
    }

    /** Holds a link for the one who made it; gives the name under which that person finds it. */
    UUID hold(UUID visitId, UUID staffId, Token token) {
        Instant now = clock.instant();
        held.values().removeIf(old -> !now.isBefore(old.until()) || old.visitId().equals(visitId));
        UUID key = UUID.randomUUID();
        held.put(key, new Held(visitId, staffId, token, now.plus(SHOWN)));
        return key;
    }

    Optional<Token> find(UUID key, UUID visitId, UUID staffId) {
        return Optional.ofNullable(held.get(key)).filter(link -> clock.instant().isBefore(link.until()))
            .filter(link -> link.visitId().equals(visitId) && link.staffId().equals(staffId)).map(Held::token);
    }

    void drop(UUID visitId) {
        held.values().removeIf(link -> link.visitId().equals(visitId));
    }
}
