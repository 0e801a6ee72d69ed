package foretress;

import io.quarkus.test.Mock;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The application's clock in tests: runs like any other until it is moved; put it back after each test. */
@Mock
@Singleton
public class MovedClock extends Clock {
    private volatile Duration ahead = Duration.ZERO;
    private volatile Instant stopped;

    public void move(Duration further) {
        ahead = ahead.plus(further);
    }

    /** Stands still until it is reset, so that a slow machine does not use up a wait of seconds. */
    public void stop() {
        stopped = Instant.now();
    }

    public void reset() {
        ahead = Duration.ZERO;
        stopped = null;
    }

    @Override
    public Instant instant() {
        Instant still = stopped;
        return (still == null ? Instant.now() : still).plus(ahead);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.offset(Clock.system(zone), ahead);
    }
}
