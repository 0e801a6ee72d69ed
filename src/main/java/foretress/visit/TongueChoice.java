package foretress.visit;

import foretress.web.SpokenLanguages;
import foretress.web.Supported;
import java.util.List;
import java.util.Locale;

/** A language the client may read, named for the desk. */
public record TongueChoice(String tag, String name, boolean chosen) {
    /** Those that are spoken, and the one the client reads already. */
    static List<TongueChoice> of(SpokenLanguages spoken, String chosen, Locale reader) {
        return Supported.TAGS.stream().filter(tag -> tag.equals(chosen) || spoken.tags().contains(tag))
            .map(tag -> new TongueChoice(tag,
                Locale.forLanguageTag(tag).getDisplayLanguage(reader), tag.equals(chosen)))
            .toList();
    }
}
