package foretress.api;

import foretress.web.Zones;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.function.Function;

/** Days, moments and zones as programs write them: RFC 3339 dates and times, IANA names of zones. */
final class Times {
    static final int FIRST_YEAR = 1900;
    static final int LAST_YEAR = 2199;
    private static final Set<String> ZONES = Zones.ids();
    private static final Instant FIRST = LocalDate.of(FIRST_YEAR, 1, 1).atStartOfDay(ZoneOffset.UTC).toInstant();
    private static final Instant LAST = LocalDate.of(LAST_YEAR, 12, 31).atStartOfDay(ZoneOffset.UTC).toInstant();

    private Times() {}

    static Shape day() {
        return Shape.read(
            text -> text.length() == 10
                && holds(LocalDate::parse, text, d -> d.getYear() >= FIRST_YEAR && d.getYear() <= LAST_YEAR),
            "a day of the calendar from %d to %d belongs here, written 2026-06-10".formatted(FIRST_YEAR, LAST_YEAR),
            "date");
    }

    static Shape month() {
        return Shape.matching("^[0-9]{4}-[0-9]{2}$",
            text -> holds(YearMonth::parse, text, m -> m.getYear() >= FIRST_YEAR && m.getYear() <= LAST_YEAR),
            "a month from %d to %d belongs here, written 2026-06".formatted(FIRST_YEAR, LAST_YEAR));
    }

    static Shape instant() {
        return Shape.read(text -> text.length() >= 20 && text.length() <= 35
            && holds(Times::instant, text, i -> !i.isBefore(FIRST) && i.isBefore(LAST)),
            "a moment with its offset belongs here, written 2026-06-10T09:30:00Z or 2026-06-10T10:30:00+01:00",
            "date-time");
    }

    static Instant instant(String text) {
        return OffsetDateTime.parse(text).toInstant();
    }

    static Shape time() {
        return Shape.matching("^([01][0-9]|2[0-3]):[0-5][0-9]$", text -> holds(LocalTime::parse, text, t -> true),
            "a time of the day belongs here, from 00:00 to 23:59");
    }

    static Shape zone() {
        return Shape.read(ZONES::contains,
            "the name of a time zone in the IANA database belongs here, such as Europe/London", "iana-zone");
    }

    private static <T> boolean holds(Function<String, T> read, String text, java.util.function.Predicate<T> also) {
        try {
            return also.test(read.apply(text));
        } catch (DateTimeException e) {
            return false;
        }
    }
}
