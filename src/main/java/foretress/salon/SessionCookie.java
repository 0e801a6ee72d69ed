package foretress.salon;

import com.google.crypto.tink.subtle.AesGcmJce;
import jakarta.inject.Singleton;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** What the staff's cookie holds: which session, and when it was last used; encrypted, so that it can be neither read nor made up. */
@Singleton
class SessionCookie {
    record Held(UUID session, Instant usedAt) {}

    private static final byte[] BOUND = "staff session cookie".getBytes(StandardCharsets.UTF_8);
    private final AesGcmJce key;

    SessionCookie(@ConfigProperty(name = "foretress.session-key") String base64) throws GeneralSecurityException {
        key = new AesGcmJce(Base64.getDecoder().decode(base64));
    }

    String write(Held held) {
        ByteBuffer plain = ByteBuffer.allocate(24).putLong(held.session().getMostSignificantBits())
            .putLong(held.session().getLeastSignificantBits()).putLong(held.usedAt().toEpochMilli());
        try {
            return Base64.getUrlEncoder().withoutPadding().encodeToString(key.encrypt(plain.array(), BOUND));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Nothing when it was not written here with this key. */
    Optional<Held> read(String value) {
        try {
            ByteBuffer plain = ByteBuffer.wrap(key.decrypt(Base64.getUrlDecoder().decode(value), BOUND));
            return Optional
                .of(new Held(new UUID(plain.getLong(), plain.getLong()), Instant.ofEpochMilli(plain.getLong())));
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
