package foretress.vault;

import foretress.running.Asked;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.hibernate.Session;
import org.hibernate.SessionCheckMode;

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
        return unwrapped(clientId, wrapped.isPresent() ? wrapped.get() : makeOnce(clientId));
    }

    Optional<DataKey> toOpen(UUID clientId) throws GeneralSecurityException {
        Optional<String> wrapped = stored(clientId);
        return wrapped.isEmpty() ? Optional.empty() : Optional.of(unwrapped(clientId, wrapped.get()));
    }

    private record Unwrapping(UUID clientId, String wrapped) {}

    private DataKey unwrapped(UUID clientId, String wrapped) throws GeneralSecurityException {
        return Asked.reckoned(new Unwrapping(clientId, wrapped), () -> master.unwrap(clientId, wrapped));
    }

    /** Loads those that are not there yet into the session, where {@link #toOpen} finds them. */
    void fetch(Collection<UUID> clientIds) {
        if (!clientIds.isEmpty()) {
            ClientKey.getEntityManager().unwrap(Session.class).findMultiple(ClientKey.class,
                List.copyOf(Set.copyOf(clientIds)), SessionCheckMode.ENABLED);
        }
    }

    private Optional<String> stored(UUID clientId) {
        return ClientKey.<ClientKey>findByIdOptional(clientId).map(key -> key.wrapped);
    }

    /** Within this server one makes it; of two servers the store takes one's key, and the other goes on with that. */
    private synchronized String makeOnce(UUID clientId) {
        try {
            return QuarkusTransaction.requiringNew().call(() -> {
                Optional<String> stored = stored(clientId);
                return stored.isPresent() ? stored.get() : make(clientId);
            });
        } catch (RuntimeException notKept) {
            return QuarkusTransaction.requiringNew().call(() -> stored(clientId)).orElseThrow(() -> notKept);
        }
    }

    private String make(UUID clientId) throws GeneralSecurityException {
        MasterKey.Wrapped fresh = master.newWrappedKey(clientId);
        var key = new ClientKey(clientId, fresh.text(), fresh.by(), clock.instant());
        key.persist();
        return key.wrapped;
    }
}
