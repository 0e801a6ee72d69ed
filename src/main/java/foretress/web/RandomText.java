package foretress.web;

import java.security.SecureRandom;
import java.util.Base64;

/**
 * 256 random bits in 43 letters of base64url (RFC 4648 section 5, no padding), good in an address and in a cookie. So long that nobody
 * guesses one, and that of one that opens something a plain SHA-256 may be kept.
 */
public final class RandomText {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private RandomText() {}

    public static String fresh() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
