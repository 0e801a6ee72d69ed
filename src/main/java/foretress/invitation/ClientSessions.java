package foretress.invitation;

import foretress.ledger.Ledger;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;

/** Finds the door a cookie opens, and closes it. */
@ApplicationScoped
public class ClientSessions {
    private final Clock clock;
    private final Ledger ledger;

    ClientSessions(Clock clock, Ledger ledger) {
        this.clock = clock;
        this.ledger = ledger;
    }

    Optional<ClientSession> openedBy(String cookie) {
        return ClientSession.behind(Token.hash(cookie)).filter(door -> door.isOpen(clock.instant()));
    }

    @Transactional
    void close(UUID doorId) {
        ClientSession.update("closedAt = ?1 where id = ?2 and closedAt is null", clock.instant(), doorId);
        ledger.note("client", "browser forgotten", doorId.toString());
    }

    @Transactional
    void speak(UUID doorId, String language) {
        ClientSession.<ClientSession>findByIdOptional(doorId).ifPresent(door -> door.speak(language));
    }
}
