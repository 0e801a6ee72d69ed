package foretress.knowledge;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) in 64 hexadecimal digits: of knowledge, of texts and papers, of what only its bearer may know. */
public final class Sha256 {
    private Sha256() {}

    /** Of the text in UTF-8. */
    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    public static String of(byte[] bytes) {
        return hex(begin().digest(bytes));
    }

    /** For what is digested piece by piece; {@link #end} gives its digits. */
    public static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    public static String end(MessageDigest pieces) {
        return hex(pieces.digest());
    }

    private static String hex(byte[] digest) {
        return HexFormat.of().formatHex(digest);
    }
}
