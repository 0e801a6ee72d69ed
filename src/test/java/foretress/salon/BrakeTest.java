package foretress.salon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import java.time.Duration;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("B10: guessing is slowed, nobody is shut out")
class BrakeTest {
    private final MovedClock clock = new MovedClock();
    private final Brake brake = new Brake(1000, clock);

    private Duration taken(String login) {
        return brake.take(login, "192.0.2.1").orElse(Duration.ZERO);
    }

    @Test void theFirstFewTriesAreFree() {
        for (int i = 0; i < Brake.FREE_TRIES; i++) assertThat(taken("petra")).isZero();
        assertThat(taken("petra")).isPositive();
    }

    @Test void eachFurtherFailureWaitsTwiceAsLongUpToAQuarterOfAnHour() {
        assertThat(Brake.wait(Brake.FREE_TRIES - 1)).isZero();
        assertThat(Brake.wait(Brake.FREE_TRIES)).isEqualTo(Duration.ofSeconds(1));
        assertThat(Brake.wait(Brake.FREE_TRIES + 1)).isEqualTo(Duration.ofSeconds(2));
        assertThat(Brake.wait(Brake.FREE_TRIES + 9)).isEqualTo(Duration.ofSeconds(512));
        assertThat(Brake.wait(Brake.FREE_TRIES + 10)).isEqualTo(Brake.LONGEST_WAIT);
        assertThat(Brake.wait(Integer.MAX_VALUE)).isEqualTo(Brake.LONGEST_WAIT);
    }

    @Test void theRightPasswordStartsAfresh() {
        for (int i = 0; i < Brake.FREE_TRIES; i++) taken("petra");
        clock.move(Duration.ofSeconds(2));
        assertThat(taken("petra")).isZero();
        brake.passed("PETRA");
        for (int i = 0; i < Brake.FREE_TRIES; i++) assertThat(taken("petra")).isZero();
    }

    @Test void aNameIsOneNameHoweverItIsWritten() {
        for (int i = 0; i < Brake.FREE_TRIES; i++) taken("petra");
        assertThat(taken("  Petra ")).isPositive();
        assertThat(taken("juno")).isZero();
    }

    @Test void oneAddressCannotTryManyNames() {
        var narrow = new Brake(40, clock);
        for (int i = 0; i < 40; i++) assertThat(narrow.take("name " + i, "192.0.2.1")).isEmpty();
        assertThat(narrow.take("name 41", "192.0.2.1")).isPresent();
        assertThat(narrow.take("name 41", "192.0.2.2")).isEmpty();
        clock.move(Duration.ofMinutes(10));
        assertThat(narrow.take("name 42", "192.0.2.1")).isEmpty();
    }

    @Test void aFloodOfMadeUpNamesDoesNotFillTheMemory() {
        for (int i = 0; i < 100_000; i++) brake.take("name " + i, "10.0." + i / 250 + "." + i % 250);
        assertThat(brake.kept()).isLessThan(50_000);
    }

    /** B10 bounds wrong tries in a row at a hundred before something else is asked; here they would take over a day. */
    @Test void aHundredWrongTriesTakeMoreThanHalfADay() {
        var all = Duration.ZERO;
        for (int i = 1; i <= 100; i++) all = all.plus(Brake.wait(i));
        assertThat(all).isGreaterThan(Duration.ofHours(12));
    }
}
