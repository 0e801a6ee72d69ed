package foretress.start;

import foretress.running.Hmac;
import java.util.HexFormat;

/** Tells two keys apart without giving either away; what is derived for one use says nothing about the other uses. */
final class KeyFingerprint {
    private KeyFingerprint() {}

    static byte[] derived(byte[] key, String use) {
        return new Hmac(key).of("foretress " + use);
    }

    static String of(byte[] key) {
        return HexFormat.of().formatHex(derived(key, "fingerprint"), 0, 16);
    }
}
