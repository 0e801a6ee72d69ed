package foretress.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages there are words in for a client, English first: the others were drafted from it by machine. */
public final class Supported {
    public static final String ORIGINAL = "en";
    public static final List<String> TAGS = List.of(ORIGINAL, "es", "fr", "pl", "ar", "vi");

    private Supported() {}

    /** Which way its script runs, as the html element says it. */
    public static String dir(String tag) {
        return tag.equals("ar") ? "rtl" : "ltr";
    }

    /** The supported tag for what was asked, itself or its plain language: es-MX gives es. */
    public static Optional<String> match(String tag) {
        if (tag == null || tag.isBlank()) {
            return Optional.empty();
        }
        String language = Locale.forLanguageTag(tag.strip()).getLanguage();
        return TAGS.contains(language) ? Optional.of(language) : Optional.empty();
    }
}
