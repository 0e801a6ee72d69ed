package foretress.running;

import io.github.bucket4j.TimeMeter;
import java.time.Clock;
import java.time.Instant;

/** Lets a bucket of tries refill by the application's own clock, so that tests can move it. */
public record ClockMeter(Clock clock) implements TimeMeter {
    @Override
    public long currentTimeNanos() {
        Instant now = clock.instant();
        return Math.addExact(Math.multiplyExact(now.getEpochSecond(), 1_000_000_000L), now.getNano());
    }

    @Override
    public boolean isWallClockBased() {
        return true;
    }
}
