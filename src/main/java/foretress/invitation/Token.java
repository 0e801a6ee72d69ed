package foretress.invitation;

import foretress.knowledge.Sha256;
import foretress.web.RandomText;
import java.security.SecureRandom;

/**
 * A random text that opens something. Only the hash is ever stored. Printing a token by accident does not reveal it.
 */
public final class Token {
    private static final SecureRandom RANDOM = new SecureRandom();

    private final String text;

    private Token(String text) {
        this.text = text;
    }

    static Token fresh() {
        return new Token(RandomText.fresh());
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
        return Sha256.of(presented);
    }

    @Override
    public String toString() {
        return "Token[hidden]";
    }
}
