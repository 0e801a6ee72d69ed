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

    public void move(Duration further) {
        ahead = ahead.plus(further);
    }

    public void reset() {
        ahead = Duration.ZERO;
    }

    @Override public Instant instant() {
        return Instant.now().plus(ahead);
    }

    @Override public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override public Clock withZone(ZoneId zone) {
        return Clock.offset(Clock.system(zone), ahead);
    }
}
