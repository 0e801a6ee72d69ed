package foretress.salon;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Instant;
import java.util.function.LongSupplier;

/**
 * The time by which sign-ins grow old: the clock's, but it does not go back when the machine's clock is set back. By how much that was
 * is told by the machine's counter, which nobody can set; so a screen left alone is signed out all the same. A restart forgets it.
 */
@Singleton
class SteadyClock {
    private final Clock clock;
    private final LongSupplier machineMillis;
    private final LongSupplier counterNanos;
    private long furthest = Long.MIN_VALUE;

    @Inject
    SteadyClock(Clock clock) {
        this(clock, System::currentTimeMillis, System::nanoTime);
    }

    SteadyClock(Clock clock, LongSupplier machineMillis, LongSupplier counterNanos) {
        this.clock = clock;
        this.machineMillis = machineMillis;
        this.counterNanos = counterNanos;
    }

    synchronized Instant instant() {
        long ahead = machineMillis.getAsLong() - counterNanos.getAsLong() / 1_000_000;
        furthest = Math.max(furthest, ahead);
        return clock.instant().plusMillis(furthest - ahead);
    }
}
