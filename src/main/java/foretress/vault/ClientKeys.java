package foretress.vault;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** One data key a client, made when first needed. */
@Singleton
class ClientKeys {
    private final MasterKey master;
    private final Clock clock;

    ClientKeys(MasterKey master, Clock clock) {
        this.master = master;
        this.clock = clock;
    }

    /** The key is committed by itself before anything is sealed with it; two first saves at once share one. */
    DataKey toSeal(UUID clientId) throws GeneralSecurityException {
        Optional<String> wrapped = stored(clientId);
        return master.unwrap(clientId, wrapped.isPresent() ? wrapped.get() : makeOnce(clientId));
    }

    Optional<DataKey> toOpen(UUID clientId) throws GeneralSecurityException {
        Optional<String> wrapped = stored(clientId);
        return wrapped.isEmpty() ? Optional.empty() : Optional.of(master.unwrap(clientId, wrapped.get()));
    }

    /** Loads them into the session, where {@link #toOpen} finds them. */
    void fetch(Collection<UUID> clientIds) {
        if (!clientIds.isEmpty()) {
            ClientKey.list("clientId in ?1", Set.copyOf(clientIds));
        }
    }

    private Optional<String> stored(UUID clientId) {
        return ClientKey.<ClientKey>findByIdOptional(clientId).map(key -> key.wrapped);
    }

    private synchronized String makeOnce(UUID clientId) {
        return QuarkusTransaction.requiringNew().call(() -> {
            Optional<String> stored = stored(clientId);
            return stored.isPresent() ? stored.get() : make(clientId);
        });
    }

    private String make(UUID clientId) throws GeneralSecurityException {
        var key = new ClientKey(clientId, master.newWrappedKey(clientId), clock.instant());
        key.persist();
        return key.wrapped;
    }
}
