package foretress.start;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Tells two keys apart without giving either away; what is derived for one use says nothing about the other uses. */
final class KeyFingerprint {
    private KeyFingerprint() {}

    static byte[] derived(byte[] key, String use) {
        try {
            var mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(("foretress " + use).getBytes(StandardCharsets.US_ASCII));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    static String of(byte[] key) {
        return HexFormat.of().formatHex(derived(key, "fingerprint"), 0, 16);
    }
}
