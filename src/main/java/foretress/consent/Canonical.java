package foretress.consent;

import java.text.Normalizer;

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
}
