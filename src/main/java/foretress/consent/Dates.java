package foretress.consent;

import foretress.web.DateWords;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Locale;

/** Dates as the reader writes them, the month always as a word, so that no day is taken for a month. */
record Dates(Locale locale) {

    /** In the language of the words, with the region the client's tag names; English without a region is written day first. */
    static Dates of(String wanted, String language) {
        Locale tag = Locale.forLanguageTag(wanted);
        if (tag.getLanguage().equals(language) && !tag.getCountry().isEmpty()) {
            return new Dates(tag);
        }
        return new Dates(language.equals("en") ? Locale.UK : Locale.forLanguageTag(language));
    }

    private DateWords words() {
        return new DateWords(locale);
    }

    String day(LocalDate date) {
        return words().written(date);
    }

    String weekday(ZonedDateTime at) {
        return words().fullAndHour(at);
    }

    String moment(ZonedDateTime at) {
        return day(at.toLocalDate()) + ", " + time(at);
    }

    String time(ZonedDateTime at) {
        return words().hour(at);
    }
}
