package foretress.vault;

import com.google.crypto.tink.AccessesPartialKey;
import com.google.crypto.tink.Aead;
import com.google.crypto.tink.InsecureSecretKeyAccess;
import com.google.crypto.tink.KeysetHandle;
import com.google.crypto.tink.RegistryConfiguration;
import com.google.crypto.tink.TinkProtoKeysetFormat;
import com.google.crypto.tink.aead.AeadConfig;
import com.google.crypto.tink.aead.AesGcmKey;
import com.google.crypto.tink.aead.PredefinedAeadParameters;
import com.google.crypto.tink.subtle.AesGcmJce;
import com.google.crypto.tink.subtle.Hkdf;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Wraps the clients' data keys. It lives outside the database: {@code foretress.start.Start} hands it in. Of several, the current one wraps
 * and each opens.
 */
@Singleton
class MasterKey {
    private static final byte[] CODES = "foretress names of equal answers, 1".getBytes(StandardCharsets.UTF_8);

    /** A data key as it is stored, and the fingerprint of the key that wrapped it. */
    record Wrapped(String text, String by) {}

    private record Known(MasterKeys keys, List<Aead> ciphers) {}

    private final Clock clock;
    private volatile Known known;

    /** @param keys as {@link MasterKeys#read} reads them */
    @Inject
    MasterKey(@ConfigProperty(name = "foretress.master-key") String keys, Clock clock) throws GeneralSecurityException {
        AeadConfig.register();
        this.clock = clock;
        use(MasterKeys.read(keys));
    }

    /** From now on these. */
    final void use(MasterKeys keys) throws GeneralSecurityException {
        List<Aead> ciphers = new ArrayList<>();
        for (MasterKeys.One one : keys.newestFirst()) {
            ciphers.add(new AesGcmJce(one.key()));
        }
        known = new Known(keys, List.copyOf(ciphers));
    }

    /** Fingerprint of the one that wraps now. */
    String current() {
        return known.keys().at(clock.instant()).fingerprint();
    }

    Wrapped newWrappedKey(UUID clientId) throws GeneralSecurityException {
        return wrapped(clientId, KeysetHandle.generateNew(PredefinedAeadParameters.AES256_GCM));
    }

    private Wrapped wrapped(UUID clientId, KeysetHandle key) throws GeneralSecurityException {
        Known now = known;
        MasterKeys.One current = now.keys().at(clock.instant());
        Aead cipher = now.ciphers().get(now.keys().newestFirst().indexOf(current));
        return new Wrapped(Base64.getEncoder()
            .encodeToString(TinkProtoKeysetFormat.serializeEncryptedKeyset(key, cipher, place(clientId))),
            current.fingerprint());
    }

    /** The same data key, wrapped by the current master key. */
    Wrapped wrappedAnew(UUID clientId, String wrapped) throws GeneralSecurityException {
        return wrapped(clientId, opened(clientId, wrapped));
    }

    DataKey unwrap(UUID clientId, String wrapped) throws GeneralSecurityException {
        KeysetHandle key = opened(clientId, wrapped);
        return new DataKey(key.getPrimitive(RegistryConfiguration.get(), Aead.class), forCodes(clientId, key));
    }

    /** By whichever of the keys opens it. */
    private KeysetHandle opened(UUID clientId, String wrapped) throws GeneralSecurityException {
        byte[] sealed = Base64.getDecoder().decode(wrapped);
        GeneralSecurityException none = null;
        for (Aead cipher : known.ciphers()) {
            try {
                return TinkProtoKeysetFormat.parseEncryptedKeyset(sealed, cipher, place(clientId));
            } catch (GeneralSecurityException anotherKey) {
                none = anotherKey;
            }
        }
        throw none;
    }

    /** Derived from the data key (HKDF, RFC 5869), so that whoever deletes that one deletes both. */
    @AccessesPartialKey
    private static byte[] forCodes(UUID clientId, KeysetHandle key) throws GeneralSecurityException {
        byte[] data = ((AesGcmKey) key.getPrimary().getKey()).getKeyBytes().toByteArray(InsecureSecretKeyAccess.get());
        return Hkdf.computeHkdf("HmacSha256", data, place(clientId), CODES, 32);
    }

    /** A wrapped key laid into another client's row does not open. */
    private static byte[] place(UUID clientId) {
        return ("client_key.wrapped." + clientId).getBytes(StandardCharsets.UTF_8);
    }
}
