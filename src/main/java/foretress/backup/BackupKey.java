package foretress.backup;

import com.google.crypto.tink.StreamingAead;
import com.google.crypto.tink.subtle.AesGcmHkdfStreaming;
import foretress.running.Hmac;
import java.security.GeneralSecurityException;
import java.util.Base64;
import java.util.HexFormat;

/**
 * Opens backups and nothing else: neither derived from another key nor kept in a backup. AES-256-GCM in segments of 1 MiB, each with its
 * number and the last one marked, so that a file cut short, swapped or put together of two does not open.
 */
public final class BackupKey {
    private static final int BYTES = 32;
    private static final int SEGMENT = 1 << 20;

    private final StreamingAead aead;
    private final String name;

    /** @throws IllegalArgumentException when it is not 32 bytes in base64 */
    public BackupKey(String base64) {
        byte[] bytes = Base64.getDecoder().decode(base64);
        if (bytes.length != BYTES) {
            throw new IllegalArgumentException("a backup key has %d bytes, not %d".formatted(BYTES, bytes.length));
        }
        try {
            aead = new AesGcmHkdfStreaming(bytes, "HmacSha256", BYTES, SEGMENT, 0);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has AES", e);
        }
        name = HexFormat.of().formatHex(new Hmac(bytes).of("foretress backup key"), 0, 8);
    }

    /** Tells it from another key and gives nothing of it away; stands in the first line of every file it closes. */
    String name() {
        return name;
    }

    StreamingAead aead() {
        return aead;
    }
}
