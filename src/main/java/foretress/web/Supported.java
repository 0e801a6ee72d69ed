package foretress.web;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages the client's pages speak, English first. */
public final class Supported {
    public static final List<String> TAGS = List.of("en", "es");

    private Supported() {}

    /** The supported tag for what was asked, itself or its plain language: es-MX gives es. */
    public static Optional<String> match(String tag) {
        if (tag == null || tag.isBlank()) {
            return Optional.empty();
        }
        String language = Locale.forLanguageTag(tag.strip()).getLanguage();
        return TAGS.contains(language) ? Optional.of(language) : Optional.empty();
    }
}
