package foretress.visit;

import foretress.web.Supported;
import java.util.List;
import java.util.Locale;

/** A language the client may read, named for the desk. */
public record TongueChoice(String tag, String name, boolean chosen) {
    static List<TongueChoice> all(String chosen) {
        return Supported.TAGS.stream().map(tag -> new TongueChoice(tag,
            Locale.forLanguageTag(tag).getDisplayLanguage(Locale.ENGLISH), tag.equals(chosen))).toList();
    }
}
