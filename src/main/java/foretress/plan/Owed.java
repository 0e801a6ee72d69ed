package foretress.plan;

import foretress.plan.OpeningHours.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A test that needs time before the visit. Starting it takes {@link #START}, looking at it {@link #READING}; both lie inside
 * opening hours from their first minute to their last.
 *
 * @param test id
 * @param takes hours on the physical clock from its start until the last reading that has to lie before the visit
 * @param readings every reading, in time since the start; the last is {@code takes}
 * @param earliestStart before this it would be too old on the day, or it is past
 * @param latestStart the last open moment from which it can be read before the visit
 * @param latestRead the last open moment for the last reading: the visit's own begin, where the salon is open then
 * @param windows from when until when it can be begun, both included, in order; empty with a conflict
 * @param visitFrom the earliest visit that it could be kept for, begun at the next open moment; empty where there is none
 * @param conflict why it cannot be kept before this visit
 */
public record Owed(String test, Duration takes, List<Duration> readings, Instant earliestStart, Instant latestStart,
    Instant latestRead,
    List<Starts> windows, Optional<Instant> visitFrom, Optional<Conflict> conflict) {
    /** What putting on a test takes. Own decision, no source: mixing, cleaning the skin, applying, writing it down. */
    public static final Duration START = Duration.ofMinutes(15);
    /** What looking at a test takes. Own decision, no source. */
    public static final Duration READING = Duration.ofMinutes(10);

    public Owed {
        readings = List.copyOf(readings);
        windows = List.copyOf(windows);
    }

    /** From the first to the last moment at which a test can begin; the same moment twice where there is one only. */
    public record Starts(Instant first, Instant last) {
        /** The starts a stretch of opening has room for, cut off at a latest one. */
        static Optional<Starts> in(Window open, Instant latest) {
            Instant last = OpeningHours.earlier(open.to().minus(START), latest);
            return last.isBefore(open.from()) ? Optional.empty() : Optional.of(new Starts(open.from(), last));
        }
    }

    /** The last moment at which it can be begun. */
    public Optional<Instant> lastOpenStart() {
        return windows.isEmpty() ? Optional.empty() : Optional.of(windows.get(windows.size() - 1).last());
    }

    public Optional<Instant> firstOpenStart() {
        return windows.stream().findFirst().map(Starts::first);
    }

    /** Whether it can be begun at that moment. */
    public boolean mayStart(Instant at) {
        return windows.stream().anyMatch(starts -> !at.isBefore(starts.first()) && !at.isAfter(starts.last()));
    }

    /** What is left, begun then, between the end of its wait and the last moment to read it; never below zero. */
    public Duration slack(Instant start) {
        Duration left = Duration.between(start.plus(takes), latestRead);
        return left.isNegative() ? Duration.ZERO : left;
    }

    /** When each reading falls, begun then: as soon as the wait is over and the salon is open. */
    public List<Instant> readingsFrom(Instant start, OpeningHours hours) {
        return readings.stream().flatMap(wait -> hours.next(start.plus(wait), READING).stream()).toList();
    }

    /**
     * The parts of a sentence such as "the visit is in 30 hours; the skin test needs 48".
     *
     * @param visitIn time from now until the visit, never below zero
     * @param needs the wait
     */
    public record Conflict(Reason reason, Duration visitIn, Duration needs) {}

    public enum Reason {
        /** Less time is left than the test needs. */
        TOO_SOON,
        /** There is time, but the salon is closed until it would be too late. */
        CLOSED_UNTIL_TOO_LATE,
        /** There is time, but the salon is shut whenever it could be read before the visit. */
        CLOSED_AT_THE_READING,
        /** On every day it could be put on, the client is younger than the label's age. */
        TOO_YOUNG,
        /** By leaflet or policy it is too old before it may be read: no hour of any day would do. */
        STANDS_TOO_SHORT
    }
}
