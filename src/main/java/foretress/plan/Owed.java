package foretress.plan;

import foretress.plan.OpeningHours.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A test that needs time before the visit.
 *
 * @param test id
 * @param takes hours on the physical clock from its start until it may be read
 * @param earliestStart before this it would be too old on the day, or it is past
 * @param latestStart after this it cannot be read before the visit: the visit less the wait
 * @param latestRead the visit itself
 * @param windows opening hours in which it can be started, in order
 * @param conflict why it cannot be started any more
 */
public record Owed(String test, Duration takes, Instant earliestStart, Instant latestStart, Instant latestRead, List<Window> windows,
                       Optional<Conflict> conflict) {
    public Owed {
        windows = List.copyOf(windows);
    }

    /** The last moment the salon is open for starting it. */
    public Optional<Instant> lastOpenStart() {
        return windows.isEmpty() ? Optional.empty() : Optional.of(windows.get(windows.size() - 1).to());
    }

    public Optional<Instant> firstOpenStart() {
        return windows.stream().findFirst().map(Window::from);
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
        CLOSED_UNTIL_TOO_LATE
    }
}
