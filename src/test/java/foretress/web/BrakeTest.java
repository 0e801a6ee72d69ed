package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.web.RateLimiter.Door;
import java.time.Duration;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("B10, R62: guessing is slowed, nobody is shut out")
class BrakeTest {
    private final MovedClock clock = new MovedClock();
    private final RateLimiter brake = new RateLimiter(40, 40, clock);

    private Duration taken(String secret) {
        return brake.guess(secret).orElse(Duration.ZERO);
    }

    @Test
    void theFirstFewTriesAreFree() {
        for (int i = 0; i < RateLimiter.FREE_TRIES; i++) {
            assertThat(taken("petra")).isZero();
        }
        assertThat(taken("petra")).isPositive();
        assertThat(taken("juno")).isZero();
    }

    @Test
    void eachFurtherFailureWaitsTwiceAsLongUpToAQuarterOfAnHour() {
        assertThat(RateLimiter.wait(RateLimiter.FREE_TRIES - 1)).isZero();
        assertThat(RateLimiter.wait(RateLimiter.FREE_TRIES)).isEqualTo(Duration.ofSeconds(1));
        assertThat(RateLimiter.wait(RateLimiter.FREE_TRIES + 1)).isEqualTo(Duration.ofSeconds(2));
        assertThat(RateLimiter.wait(RateLimiter.FREE_TRIES + 9)).isEqualTo(Duration.ofSeconds(512));
        assertThat(RateLimiter.wait(RateLimiter.FREE_TRIES + 10)).isEqualTo(RateLimiter.LONGEST_WAIT);
        assertThat(RateLimiter.wait(Integer.MAX_VALUE)).isEqualTo(RateLimiter.LONGEST_WAIT);
    }

    @Test
    void theRightOneStartsAfresh() {
        for (int i = 0; i < RateLimiter.FREE_TRIES; i++) {
            taken("petra");
        }
        clock.move(Duration.ofSeconds(2));
        assertThat(taken("petra")).isZero();
        brake.passed("petra");
        for (int i = 0; i < RateLimiter.FREE_TRIES; i++) {
            assertThat(taken("petra")).isZero();
        }
    }

    @Test
    void oneNetworkHasSoManyTriesInTenMinutes() {
        for (int i = 0; i < 40; i++) {
            assertThat(brake.stranger(Door.SIGN_IN, "2001:db8::" + i)).isEmpty();
        }
        assertThat(brake.stranger(Door.SIGN_IN, "2001:db8::99")).isPresent();
        assertThat(brake.stranger(Door.LINK, "2001:db8::99")).isEmpty();
        assertThat(brake.stranger(Door.SIGN_IN, "192.0.2.2")).isEmpty();
        clock.move(Duration.ofMinutes(10));
        assertThat(brake.stranger(Door.SIGN_IN, "2001:db8::1")).isEmpty();
    }

    @Test
    @DisplayName("R62: a hundred thousand knocks from five thousand addresses leave whoever holds a link alone")
    void aCrowdOfStrangersStandsInNobodysWay() {
        IntStream.range(0, 100_000).forEach(i -> brake.stranger(Door.LINK, "10.0." + i % 5_000 / 250 + "." + i % 250));
        for (int i = 0; i < 40; i++) {
            assertThat(brake.holder(Door.LINK, "link 7")).isEmpty();
        }
        assertThat(brake.holder(Door.LINK, "link 7")).isPresent();
        assertThat(brake.holder(Door.LINK, "link 8")).isEmpty();
        assertThat(brake.stranger(Door.LINK, "192.0.2.99")).isEmpty();
    }

    @Test
    void aFloodOfMadeUpNamesDoesNotFillTheMemory() {
        for (int i = 0; i < 100_000; i++) {
            brake.stranger(Door.SIGN_IN, "10." + i / 65_536 + "." + i / 256 % 256 + "." + i % 256);
            brake.guess("name " + i);
        }
        assertThat(brake.kept()).isLessThanOrEqualTo(40_000);
    }

    /** B10 bounds wrong tries in a row at a hundred before something else is asked; here they would take over a day. */
    @Test
    void aHundredWrongTriesTakeMoreThanHalfADay() {
        Duration all = Duration.ZERO;
        for (int i = 1; i <= 100; i++) {
            all = all.plus(RateLimiter.wait(i));
        }
        assertThat(all).isGreaterThan(Duration.ofHours(12));
    }

    @Test
    void theRefusalSaysWhenToComeAgain() {
        assertThat(RateLimiter.tooOften(Duration.ofMillis(2_500)).getResponse().getHeaderString("Retry-After"))
            .isEqualTo("3");
    }
}
