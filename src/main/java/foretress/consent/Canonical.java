package foretress.consent;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.HexFormat;

/** One spelling for one text: NFC, lines ended by \n, no blanks at a line's end. Only this spelling is hashed. */
final class Canonical {
    private Canonical() {}

    static String text(String any) {
        return Normalizer.normalize(any, Normalizer.Form.NFC)
            .replace("\r\n", "\n").replace('\r', '\n')
            .replaceAll("[ \\t]+\n", "\n");
    }

    /**
     * The words of one line. Line breaks and tabs would be read as structure, so they become spaces; marks that turn the
     * direction of letters could make a line read as another, so they go. Isolates, which keep to themselves, stay.
     */
    static String line(String any) {
        return Normalizer.normalize(any, Normalizer.Form.NFC).replaceAll("[\\u202A-\\u202E]", "")
            .replaceAll("[\\p{Cntrl}\\u2028\\u2029\\s]+", " ").strip();
    }

    static String sha256(String canonical) {
        return sha256(canonical.getBytes(StandardCharsets.UTF_8));
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
