package foretress.web;

import io.quarkus.arc.Arc;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Locale;

/** The language in which staff's screens are made: the one this person reads; English for what is made outside a page. */
@Singleton
public class StaffLanguage {
    /** Those with words for staff. */
    public static final List<String> TAGS = List.of(Supported.ORIGINAL, "es");

    private final Language language;

    StaffLanguage(Language language) {
        this.language = language;
    }

    public String tag() {
        String asked = Arc.container().requestContext().isActive() ? language.getTag() : Supported.ORIGINAL;
        return TAGS.contains(asked) ? asked : Supported.ORIGINAL;
    }

    public Locale locale() {
        return Locale.forLanguageTag(tag());
    }

    public DateWords dates() {
        return new DateWords(locale());
    }
}
