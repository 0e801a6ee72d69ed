package foretress.vault;

import com.google.crypto.tink.Aead;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.Optional;
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
    Aead toSeal(UUID clientId) throws GeneralSecurityException {
        var wrapped = stored(clientId);
        return master.unwrap(clientId, wrapped.isPresent() ? wrapped.get() : makeOnce(clientId));
    }

    Optional<Aead> toOpen(UUID clientId) throws GeneralSecurityException {
        var wrapped = stored(clientId);
        return wrapped.isEmpty() ? Optional.empty() : Optional.of(master.unwrap(clientId, wrapped.get()));
    }

    private Optional<String> stored(UUID clientId) {
        return ClientKey.<ClientKey>findByIdOptional(clientId).map(key -> key.wrapped);
    }

    private synchronized String makeOnce(UUID clientId) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var stored = stored(clientId);
            return stored.isPresent() ? stored.get() : make(clientId);
        });
    }

    private String make(UUID clientId) throws GeneralSecurityException {
        var key = new ClientKey();
        key.clientId = clientId;
        key.wrapped = master.newWrappedKey(clientId);
        key.madeAt = clock.instant();
        key.persist();
        return key.wrapped;
    }
}
