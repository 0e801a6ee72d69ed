package foretress.invitation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * 256 random bits that open something, written in 43 letters of base64url (RFC 4648 section 5, no padding). Only the
 * hash is ever stored; a plain SHA-256 is enough at this length. Printing a token by accident does not reveal it.
 */
public final class Token {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private final String text;

    private Token(String text) {
        this.text = text;
    }

    static Token fresh() {
        var bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return new Token(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** A one-use code of eight digits, every one of the hundred million equally likely. */
    static String freshCode() {
        return "%08d".formatted(RANDOM.nextInt(100_000_000));
    }

    /** The secret itself, to be put before the person it is for and nowhere else. */
    String reveal() {
        return text;
    }

    String hash() {
        return hash(text);
    }

    /** SHA-256 in 64 hex digits of whatever was presented, well formed or not. */
    static String hash(String presented) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(presented.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyPlatformHasIt) {
            throw new IllegalStateException(everyPlatformHasIt);
        }
    }

    @Override
    public String toString() {
        return "Token[hidden]";
    }
}
