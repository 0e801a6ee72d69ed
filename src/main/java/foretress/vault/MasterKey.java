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
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Wraps the clients' data keys. It lives outside the database: {@code foretress.start.Start} hands it in. */
@Singleton
class MasterKey {
    private static final byte[] CODES = "foretress names of equal answers, 1".getBytes(StandardCharsets.UTF_8);

    private final Aead master;

    MasterKey(@ConfigProperty(name = "foretress.master-key") String base64) throws GeneralSecurityException {
        AeadConfig.register();
        master = new AesGcmJce(Base64.getDecoder().decode(base64));
    }

    String newWrappedKey(UUID clientId) throws GeneralSecurityException {
        KeysetHandle key = KeysetHandle.generateNew(PredefinedAeadParameters.AES256_GCM);
        return Base64.getEncoder()
            .encodeToString(TinkProtoKeysetFormat.serializeEncryptedKeyset(key, master, place(clientId)));
    }

    DataKey unwrap(UUID clientId, String wrapped) throws GeneralSecurityException {
        KeysetHandle key =
            TinkProtoKeysetFormat.parseEncryptedKeyset(Base64.getDecoder().decode(wrapped), master, place(clientId));
        return new DataKey(key.getPrimitive(RegistryConfiguration.get(), Aead.class), forCodes(clientId, key));
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
