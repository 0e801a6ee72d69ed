package foretress.plan;

import foretress.plan.OpeningHours.Window;
import foretress.plan.Owed.Conflict;
import foretress.plan.Owed.Reason;
import foretress.plan.Owed.Starts;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Fits one test between now and the visit. A start is possible when it ends before closing and its last reading can be made
 * at an open moment, at the latest as the visit begins.
 */
record Planner(Instant visit, Waits waits, OpeningHours hours, Instant now) {

    Owed owed(String test) {
        List<Duration> readings = waits.readings(test);
        Duration takes = readings.get(readings.size() - 1);
        Instant latestRead = hours.last(visit, Owed.READING).orElse(visit);
        Instant bound = latestRead.minus(takes);
        Instant fresh = fresh(test);
        Instant young = dawn(waits.notBefore(test));
        Instant earliest = OpeningHours.later(OpeningHours.later(now, fresh), young);
        boolean short_ = fresh.isAfter(visit.minus(takes));
        List<Starts> windows = short_ ? List.of() : starts(earliest, bound);
        Optional<Conflict> conflict = windows.isEmpty()
            ? Optional.of(new Conflict(reason(short_, young, bound, takes), left(), takes)) : Optional.empty();
        return new Owed(test, takes, readings, earliest, hours.last(bound, Owed.START).orElse(bound), latestRead,
            windows,
            short_ ? Optional.empty() : visitFrom(OpeningHours.later(now, young), takes), conflict);
    }

    private List<Starts> starts(Instant earliest, Instant bound) {
        List<Window> open = bound.isBefore(earliest) ? List.of() : hours.between(earliest, bound.plus(Owed.START));
        return open.stream().flatMap(window -> Starts.in(window, bound).stream()).toList();
    }

    private Reason reason(boolean stands, Instant young, Instant bound, Duration takes) {
        if (stands) {
            return Reason.STANDS_TOO_SHORT;
        }
        if (young.isAfter(now) && young.isAfter(bound)) {
            return Reason.TOO_YOUNG;
        }
        if (visit.minus(takes).isBefore(now)) {
            return Reason.TOO_SOON;
        }
        return bound.isBefore(now) ? Reason.CLOSED_AT_THE_READING : Reason.CLOSED_UNTIL_TOO_LATE;
    }

    private Duration left() {
        return visit.isBefore(now) ? Duration.ZERO : Duration.between(now, visit);
    }

    /** The first moment from which it is not too old on the day of the visit. */
    private Instant fresh(String test) {
        return dawn(waits.firstDay(test, visit.atZone(hours.zone()).toLocalDate()));
    }

    private Instant dawn(Optional<LocalDate> day) {
        return day.map(first -> first.atStartOfDay(hours.zone()).toInstant()).orElse(Instant.MIN);
    }

    /** From the next quarter of an hour on: a page shows no seconds, and half a minute too early is too early. */
    private Optional<Instant> visitFrom(Instant from, Duration takes) {
        Instant soon = Instant.ofEpochSecond(-Math.floorDiv(-from.plusNanos(999_999_999).getEpochSecond(), 900L) * 900);
        return hours.next(soon, Owed.START).flatMap(start -> hours.next(start.plus(takes), Owed.READING));
    }
}
