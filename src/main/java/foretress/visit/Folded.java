package foretress.visit;

import java.text.Normalizer;
import java.util.Locale;

/** Text made equal for searching: no accents, no capitals, single spaces. */
final class Folded {
    private Folded() {}

    static String of(String text) {
        String compatible = Normalizer.normalize(text, Normalizer.Form.NFKC).toLowerCase(Locale.ROOT);
        String bare = Normalizer.normalize(compatible, Normalizer.Form.NFD).replaceAll("\\p{Mn}+", "");
        return bare.replaceAll("[\\s\\p{Z}\\p{Cc}]+", " ").strip();
    }
}
