package foretress.owner;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestQuery;

/** A search of the trail as it stands in an address, word for word as it was typed; the page, the exports and the links between them share it. */
public class TrailQuery {
    private static final int FIRST_YEAR = 2000, LAST_YEAR = 2199;

    @RestQuery Optional<String> month;
    /** A name, as at the desk. */
    @RestQuery Optional<String> client;
    /** The id of one client or visit, whatever its name. */
    @RestQuery Optional<String> about;
    @RestQuery Optional<String> person;
    @RestQuery Optional<String> act;
    @RestQuery Optional<String> from;
    /** Time of day on the first day. */
    @RestQuery Optional<String> after;
    @RestQuery Optional<String> until;
    /** Time of day on the last day, the whole minute. */
    @RestQuery Optional<String> before;
    @RestQuery Optional<String> page;

    Optional<Instant> first(ZoneId zone) {
        return day(from).map(day -> day.atTime(time(after).orElse(LocalTime.MIN)).atZone(zone).toInstant());
    }

    /** The first moment that is too late. */
    Optional<Instant> end(ZoneId zone) {
        return day(until).map(day -> time(before).map(time -> day.atTime(time).plusMinutes(1))
            .orElseGet(() -> day.plusDays(1).atStartOfDay()).atZone(zone).toInstant());
    }

    private static Optional<LocalDate> day(Optional<String> typed) {
        try {
            return typed.map(LocalDate::parse).filter(d -> d.getYear() >= FIRST_YEAR && d.getYear() <= LAST_YEAR);
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }

    private static Optional<LocalTime> time(Optional<String> typed) {
        try {
            return typed.map(LocalTime::parse);
        } catch (DateTimeException notATime) {
            return Optional.empty();
        }
    }
}
