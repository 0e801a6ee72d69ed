package foretress.web;

import java.text.Normalizer;
import java.util.Locale;

/** Text as it is compared: NFKC, trimmed, lower case in no particular language. */
public final class Fold {
    private Fold() {}

    public static String fold(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFKC).strip().toLowerCase(Locale.ROOT);
    }
}
