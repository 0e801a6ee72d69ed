package foretress.salon;

import foretress.web.Form;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** One day's opening hours as a field of a form. */
record DayField(String field, String name, String value) {
    static List<DayField> all(Form form, Locale locale) {
        return Arrays.stream(DayOfWeek.values())
            .map(day -> new DayField(field(day), name(day, locale), form.one(field(day))))
            .toList();
    }

    static String field(DayOfWeek day) {
        return "hours-" + day.name().toLowerCase(Locale.ROOT);
    }

    static String name(DayOfWeek day, Locale locale) {
        return day.getDisplayName(TextStyle.FULL_STANDALONE, locale);
    }
}
