package foretress.visit;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A month to choose, by name. */
public record MonthChoice(String number, String name, boolean chosen) {
    /** @param typed the number chosen so far, or blank */
    public static List<MonthChoice> all(String typed, Locale locale) {
        return Stream.of(Month.values()).map(month -> new MonthChoice("" + month.getValue(),
            month.getDisplayName(TextStyle.FULL_STANDALONE, locale), typed.equals("" + month.getValue()))).toList();
    }
}
