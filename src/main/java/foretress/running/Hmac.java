package foretress.running;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** HMAC-SHA256 (RFC 2104) under one key: what only its holder can make, and make again. */
public final class Hmac {
    private final SecretKeySpec key;

    public Hmac(byte[] key) {
        this.key = new SecretKeySpec(key, "HmacSHA256");
    }

    /** With a key as settings write it. */
    public static Hmac ofBase64(String key) {
        return new Hmac(Base64.getDecoder().decode(key));
    }

    /** @return 32 bytes, of all parts one after the other */
    public byte[] of(byte[]... parts) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(key);
            for (byte[] part : parts) {
                mac.update(part);
            }
            return mac.doFinal();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    public byte[] of(String words) {
        return of(words.getBytes(StandardCharsets.UTF_8));
    }

    /** @return 64 hexadecimal digits */
    public String hex(String words) {
        return HexFormat.of().formatHex(of(words));
    }

    /** Whether both are the same, in a time that does not tell how much of them is. */
    public static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
