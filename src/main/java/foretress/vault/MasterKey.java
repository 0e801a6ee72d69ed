package foretress.vault;

import com.google.crypto.tink.Aead;
import com.google.crypto.tink.KeysetHandle;
import com.google.crypto.tink.RegistryConfiguration;
import com.google.crypto.tink.TinkProtoKeysetFormat;
import com.google.crypto.tink.aead.AeadConfig;
import com.google.crypto.tink.aead.PredefinedAeadParameters;
import com.google.crypto.tink.subtle.AesGcmJce;
import jakarta.inject.Singleton;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.Base64;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Wraps the clients' data keys. It lives outside the database: {@code foretress.Start} hands it in. */
@Singleton
class MasterKey {
    private final Aead master;

    MasterKey(@ConfigProperty(name = "foretress.master-key") String base64) throws GeneralSecurityException {
        AeadConfig.register();
        master = new AesGcmJce(Base64.getDecoder().decode(base64));
    }

    String newWrappedKey(UUID clientId) throws GeneralSecurityException {
        var key = KeysetHandle.generateNew(PredefinedAeadParameters.AES256_GCM);
        return Base64.getEncoder().encodeToString(TinkProtoKeysetFormat.serializeEncryptedKeyset(key, master, place(clientId)));
    }

    Aead unwrap(UUID clientId, String wrapped) throws GeneralSecurityException {
        return TinkProtoKeysetFormat.parseEncryptedKeyset(Base64.getDecoder().decode(wrapped), master, place(clientId))
            .getPrimitive(RegistryConfiguration.get(), Aead.class);
    }

    /** A wrapped key laid into another client's row does not open. */
    private static byte[] place(UUID clientId) {
        return ("client_key.wrapped." + clientId).getBytes(StandardCharsets.UTF_8);
    }
}
