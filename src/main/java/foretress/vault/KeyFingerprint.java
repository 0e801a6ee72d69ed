package foretress.vault;

import foretress.running.Hmac;
import java.util.HexFormat;

/** Tells two keys apart without giving either away; what is derived for one use says nothing about the other uses. */
public final class KeyFingerprint {
    private KeyFingerprint() {}

    public static byte[] derived(byte[] key, String use) {
        return new Hmac(key).of("foretress " + use);
    }

    public static String of(byte[] key) {
        return HexFormat.of().formatHex(derived(key, "fingerprint"), 0, 16);
    }
}
