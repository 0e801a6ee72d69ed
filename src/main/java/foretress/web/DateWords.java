package foretress.web;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;

/**
 * Days, months and hours in words of one language and country. The month is always a word, so that no day is taken for a month. Every
 * page, letter and paper says its dates through it; which language and how near the reader is to it is theirs to know. Digits are Western in
 * every language, as in what is typed.
 */
public record DateWords(Locale locale) {
    /** "Thursday 11 June". */
    public String weekday(TemporalAccessor day) {
        return say("EEEE d MMMM", day);
    }

    /** "Thu 11 Jun". */
    public String shortWeekday(TemporalAccessor day) {
        return say("EEE d MMM", day);
    }

    /** "11 June 2026". */
    public String date(TemporalAccessor day) {
        return say("d MMMM uuuu", day);
    }

    /** "11 Jun 2026". */
    public String shortDate(TemporalAccessor day) {
        return say("d MMM uuuu", day);
    }

    /** "June 2026". */
    public String month(TemporalAccessor month) {
        return say("LLLL uuuu", month);
    }

    /** "14:00". */
    public String hour(TemporalAccessor moment) {
        return say("HH:mm", moment);
    }

    /** "11 June 2026, 14:00". */
    public String dateAndHour(TemporalAccessor moment) {
        return date(moment) + ", " + hour(moment);
    }

    /** As the country writes a date at its longest, with the day's name. */
    public String full(TemporalAccessor day) {
        return say(FormatStyle.FULL, day);
    }

    public String fullAndHour(TemporalAccessor moment) {
        return full(moment) + ", " + hour(moment);
    }

    /** As the country writes a date with its month as a word. */
    public String written(TemporalAccessor day) {
        return say(FormatStyle.LONG, day);
    }

    private String say(String pattern, TemporalAccessor when) {
        return DateTimeFormatter.ofPattern(joined(pattern), locale).format(when);
    }

    /** What a language puts between day, month and year (CLDR, availableFormats MMMMd, yMMMM and yMMMMd). */
    private String joined(String pattern) {
        return switch (locale.getLanguage()) {
            case "es" -> pattern.replace("d MMMM", "d 'de' MMMM").replaceAll("(?<=MMMM|LLLL) (?=uuuu)", " 'de' ");
            case "vi" -> pattern.replace("LLLL", "MMMM").replace("MMMM uuuu", "MMMM 'năm' uuuu");
            default -> pattern;
        };
    }

    private String say(FormatStyle style, TemporalAccessor day) {
        return DateTimeFormatter.ofLocalizedDate(style).withLocale(locale).format(day);
    }
}
