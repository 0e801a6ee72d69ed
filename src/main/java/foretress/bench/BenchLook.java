package foretress.bench;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The clocks looked at together: the one on the wall, and the machine's counter with what has run by it.
 *
 * @param nanos as {@link BenchNanos} says it
 */
record BenchLook(Instant wall, long nanos, Run run) {
    /** Clocks are corrected by a second or two, and a busy machine takes its time between two readings: less than this is no sleep. */
    static final Duration LEAST = Duration.ofSeconds(10);

    /** @param ranMillis the counter when the machine fell asleep */
    record Sleep(long ranMillis, Instant from, Instant to) {}

    /** By how much further the wall's clock went than the counter; a wall clock put back tells nothing. */
    Optional<Sleep> sleptSince(BenchLook before) {
        Duration missed = Duration.between(before.wall, wall).minusNanos(nanos - before.nanos);
        return missed.compareTo(LEAST) < 0 ? Optional.empty()
            : Optional.of(new Sleep(before.run.ranMillis(), wall.minus(missed), wall));
    }
}
