package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("R68: a clock set back brings no sign-in back to life")
class SteadyClockTest {
    private static final Instant NINE = Instant.parse("2026-11-29T09:00:00Z");
    private final AtomicLong machine = new AtomicLong(NINE.toEpochMilli()), counter = new AtomicLong(77);
    private final SteadyClock steady = new SteadyClock(new Clock() {
        @Override
        public Instant instant() {
            return Instant.ofEpochMilli(machine.get());
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }, machine::get, counter::get);

    private void passes(int minutes) {
        machine.addAndGet(Duration.ofMinutes(minutes).toMillis());
        counter.addAndGet(Duration.ofMinutes(minutes).toNanos());
    }

    @Test
    void itIsTheClockWhileNobodySetsItBack() {
        assertThat(steady.instant()).isEqualTo(NINE);
        passes(31);
        assertThat(steady.instant()).isEqualTo(NINE.plus(Duration.ofMinutes(31)));
    }

    @Test
    void aScreenLeftAloneHalfAnHourIsOverThoughTheClockWasSetBackTwenty() {
        Instant used = steady.instant();
        passes(31);
        machine.addAndGet(-Duration.ofMinutes(20).toMillis());
        assertThat(Duration.between(used, steady.instant())).isEqualTo(Duration.ofMinutes(31))
            .isGreaterThan(Sessions.IDLE);
        passes(5);
        assertThat(Duration.between(used, steady.instant())).isEqualTo(Duration.ofMinutes(36));
    }

    @Test
    void aClockSetForwardIsBelieved() {
        steady.instant();
        machine.addAndGet(Duration.ofHours(2).toMillis());
        assertThat(steady.instant()).isEqualTo(NINE.plus(Duration.ofHours(2)));
    }
}
