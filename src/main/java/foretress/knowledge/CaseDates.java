package foretress.knowledge;

import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.Season;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates as a case says them: 2024-06-10, 2024-06, summer 2024, 2024, 2-3 years ago, longer than 5 years, dont-know. */
final class CaseDates {
    private static final Pattern SEASON = Pattern.compile("(spring|summer|autumn|winter) (\\d{4})");
    private static final Pattern AGO = Pattern.compile("(\\d{1,3})-(\\d{1,3}) years ago");
    private static final Pattern LONGER = Pattern.compile("longer than (\\d{1,3}) years");

    private CaseDates() {}

    static SaidDate read(Yaml yaml) {
        String said = yaml.text();
        Matcher season = SEASON.matcher(said);
        Matcher ago = AGO.matcher(said);
        Matcher longer = LONGER.matcher(said);
        if (said.equals("dont-know")) {
            return new SaidDate.NotKnown();
        } else if (season.matches()) {
            return new SaidDate.InSeason(Season.valueOf(season.group(1).toUpperCase(Locale.ROOT)),
                Year.parse(season.group(2)));
        } else if (ago.matches() && Integer.parseInt(ago.group(1)) <= Integer.parseInt(ago.group(2))) {
            return new SaidDate.YearsAgo(Integer.parseInt(ago.group(1)), Integer.parseInt(ago.group(2)));
        } else if (longer.matches()) {
            return new SaidDate.LongerThan(Integer.parseInt(longer.group(1)));
        }
        return precise(yaml, said);
    }

    private static SaidDate precise(Yaml yaml, String said) {
        try {
            return switch (said.length()) {
                case 4 -> new SaidDate.InYear(Year.parse(said));
                case 7 -> new SaidDate.InMonth(YearMonth.parse(said));
                case 10 -> new SaidDate.OnDay(LocalDate.parse(said));
                default -> throw noDate(yaml);
            };
        } catch (DateTimeParseException e) {
            throw noDate(yaml);
        }
    }

    static LocalDate day(Yaml yaml) {
        try {
            return LocalDate.parse(yaml.text());
        } catch (DateTimeParseException e) {
            throw noDate(yaml);
        }
    }

    private static Yaml.Refused noDate(Yaml yaml) {
        return yaml.refuse("'%s' is no date a case can say".formatted(yaml.text()));
    }
}
