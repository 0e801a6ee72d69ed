package foretress.web;

import java.util.List;
import java.util.Locale;

/** A language under the name its speakers give it. */
public record Offered(String tag, String name, boolean current) {
    /** Every language there is, one of them the current one. */
    public static List<Offered> all(String current) {
        return of(Supported.TAGS, current);
    }

    public static List<Offered> of(List<String> tags, String current) {
        return tags.stream()
            .map(tag -> new Offered(tag, name(Locale.forLanguageTag(tag)), tag.equals(current))).toList();
    }

    private static String name(Locale locale) {
        String name = locale.getDisplayLanguage(locale);
        return name.substring(0, 1).toUpperCase(locale) + name.substring(1);
    }
}
