package foretress.plan;

import foretress.plan.Week.Span;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * When the salon is open: its week, read in its zone, less the days on which it is shut. Everything that asks whether
 * something can begin or be looked at asks here.
 *
 * @param closed single days on which it is shut, holidays and others
 */
public record OpeningHours(Week week, Set<LocalDate> closed, ZoneId zone) {
    /** How far a next or last open moment is looked for; a salon that is shut so long has none. */
    public static final Duration HORIZON = Duration.ofDays(400);
    /** Most moments are found within a week; looking further costs more. */
    private static final Duration NEAR = Duration.ofDays(8);

    public OpeningHours {
        closed = Set.copyOf(closed);
    }

    public OpeningHours(Week week, ZoneId zone) {
        this(week, Set.of(), zone);
    }

    /** A stretch of time that is longer than nothing; it ends where {@code to} begins. */
    public record Window(Instant from, Instant to) {
        public Window {
            if (!from.isBefore(to)) {
                throw new IllegalArgumentException("no stretch of time: %s to %s".formatted(from, to));
            }
        }

        boolean holds(Duration takes) {
            return !from.plus(takes).isAfter(to);
        }
    }

    /** Every stretch the salon is open between two instants, in order, cut off at both; what touches is one stretch. */
    public List<Window> between(Instant from, Instant to) {
        List<Window> windows = new ArrayList<>();
        LocalDate last = to.atZone(zone).toLocalDate();
        for (LocalDate day = from.atZone(zone).toLocalDate(); !day.isAfter(last); day = day.plusDays(1)) {
            for (Span span : closed.contains(day) ? List.<Span>of() : week.on(day.getDayOfWeek())) {
                Instant opens = later(from, opening(day.atTime(span.from())));
                Instant closes = earlier(to, closing(day.atTime(span.to())));
                if (opens.isBefore(closes)) {
                    windows.add(new Window(opens, closes));
                }
            }
        }
        return joined(windows);
    }

    /** The first moment, from this one on, at which something that takes so long begins and ends while the salon is open. */
    public Optional<Instant> next(Instant from, Duration takes) {
        return first(from, NEAR, takes).or(() -> first(from, HORIZON, takes));
    }

    private Optional<Instant> first(Instant from, Duration within, Duration takes) {
        return between(from, from.plus(within)).stream().filter(window -> window.holds(takes)).findFirst()
            .map(Window::from);
    }

    /** The last moment, up to this one, at which something that takes so long begins and ends while the salon is open. */
    public Optional<Instant> last(Instant until, Duration takes) {
        return latest(until, NEAR, takes).or(() -> latest(until, HORIZON, takes));
    }

    private Optional<Instant> latest(Instant until, Duration within, Duration takes) {
        return between(until.minus(within), until.plus(takes)).stream().filter(window -> window.holds(takes))
            .reduce((earlier, later) -> later).map(window -> window.to().minus(takes));
    }

    /** Whether something that takes so long can begin at this moment and end while the salon is open. */
    public boolean open(Instant at, Duration takes) {
        return between(at, at.plus(takes)).contains(new Window(at, at.plus(takes)));
    }

    /** When clocks are put back the hours of one span may reach past the start of the next. */
    private static List<Window> joined(List<Window> windows) {
        List<Window> joined = new ArrayList<>();
        windows.sort(Comparator.comparing(Window::from));
        for (Window window : windows) {
            int before = joined.size() - 1;
            if (before >= 0 && !joined.get(before).to().isBefore(window.from())) {
                joined.set(before, new Window(joined.get(before).from(), later(joined.get(before).to(), window.to())));
            } else {
                joined.add(window);
            }
        }
        return joined;
    }

    /** A wall time that the clocks skip is the moment they are put forward; of two, opening is the first. */
    private Instant opening(LocalDateTime wall) {
        ZoneOffsetTransition skipped = zone.getRules().getTransition(wall);
        return skipped != null && skipped.isGap() ? skipped.getInstant()
            : wall.atZone(zone).withEarlierOffsetAtOverlap().toInstant();
    }

    private Instant closing(LocalDateTime wall) {
        ZoneOffsetTransition skipped = zone.getRules().getTransition(wall);
        return skipped != null && skipped.isGap() ? skipped.getInstant()
            : wall.atZone(zone).withLaterOffsetAtOverlap().toInstant();
    }

    static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }
}
