package foretress.alternative;

import foretress.ledger.Ledger;
import foretress.vault.Vault;
import foretress.visit.ServiceWish;
import foretress.visit.Visit;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The other service a client would like, for as long as nobody has talked with them and they have not changed their mind. */
@ApplicationScoped
public class Wishes implements ServiceWish {
    private final Vault vault;
    private final Ledger ledger;
    private final Clock clock;

    Wishes(Vault vault, Ledger ledger, Clock clock) {
        this.vault = vault;
        this.ledger = ledger;
        this.clock = clock;
    }

    @Override
    public Optional<String> of(Visit visit) {
        return Wish.newest(visit).map(this::open).filter(id -> !id.equals(Wish.NONE));
    }

    @Override
    public Map<UUID, String> of(Collection<Visit> visits) {
        Map<UUID, String> newest = new HashMap<>();
        Wish.of(visits.stream().map(visit -> visit.id).toList())
            .forEach(said -> newest.put(said.visitId(), open(said)));
        newest.values().removeIf(Wish.NONE::equals);
        return newest;
    }

    /** Keeps what the client said last; the same said twice is kept once. */
    @Transactional
    public void say(UUID visitId, Optional<String> service) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        if (of(visit).equals(service)) {
            return;
        }
        new Wish(visit, clock.instant(),
            vault.sealing(visit.client.id, service.orElse(Wish.NONE).getBytes(StandardCharsets.UTF_8))).persist();
        ledger.note("client", service.isPresent() ? "another service asked for" : "another service no longer asked for",
            visit.id.toString());
    }

    private String open(Wish said) {
        return new String(vault.open(said), StandardCharsets.UTF_8);
    }
}
