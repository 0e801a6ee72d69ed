package foretress.plan;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * When the salon is open, in wall time.
 *
 * @param week hours of each weekday; a day that is missing is closed
 * @param closed single days on which it is closed
 */
public record OpeningHours(Map<DayOfWeek, List<Hours>> week, Set<LocalDate> closed, ZoneId zone) {
    public OpeningHours {
        week = Map.copyOf(week);
        closed = Set.copyOf(closed);
    }

    public OpeningHours(Map<DayOfWeek, List<Hours>> week, ZoneId zone) {
        this(week, Set.of(), zone);
    }

    /** From opening until closing on one day; closing is after opening. */
    public record Hours(LocalTime opens, LocalTime closes) {
        public Hours {
            if (!opens.isBefore(closes)) {
                throw new IllegalArgumentException("not opening hours: %s to %s".formatted(opens, closes));
            }
        }
    }

    /** A stretch of time, both ends included. */
    public record Window(Instant from, Instant to) {}

    /** Every stretch the salon is open between two instants, in order, cut off at both. */
    public List<Window> between(Instant from, Instant to) {
        List<Window> windows = new ArrayList<>();
        LocalDate last = to.atZone(zone).toLocalDate();
        for (LocalDate day = from.atZone(zone).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            for (Hours hours : closed.contains(day) ? List.<Hours>of() : week.getOrDefault(day.getDayOfWeek(), List.of())) {
                Instant opens = later(from, opening(day.atTime(hours.opens())));
                Instant closes = earlier(to, closing(day.atTime(hours.closes())));
                if (!closes.isBefore(opens)) {
                    windows.add(new Window(opens, closes));
                }
            }
        }
        return windows;
    }

    /** A wall time that the clocks skip is the moment they are put forward; of two, opening is the first. */
    private Instant opening(LocalDateTime wall) {
        ZoneOffsetTransition skipped = zone.getRules().getTransition(wall);
        return skipped != null && skipped.isGap() ? skipped.getInstant() : wall.atZone(zone).withEarlierOffsetAtOverlap().toInstant();
    }

    private Instant closing(LocalDateTime wall) {
        ZoneOffsetTransition skipped = zone.getRules().getTransition(wall);
        return skipped != null && skipped.isGap() ? skipped.getInstant() : wall.atZone(zone).withLaterOffsetAtOverlap().toInstant();
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}
