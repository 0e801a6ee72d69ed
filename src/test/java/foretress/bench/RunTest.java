package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class RunTest {
    private static final long SECOND = 1_000_000_000L;

    @Test
    void whileTheServerRunsBothCountersRun() {
        assertThat(new Run(1000, 5000).on(3 * SECOND)).isEqualTo(new Run(4000, 8000));
    }

    @Test
    void aRestOfTheServerAddsNothingToADish() {
        assertThat(new Run(1000, 5000).rested(60_000)).isEqualTo(new Run(1000, 65_000));
    }

    @Test
    void aWallClockPutBackTakesNothingAway() {
        assertThat(new Run(1000, 5000).rested(-3_600_000)).isEqualTo(new Run(1000, 5000));
    }

    @Test
    void aStartLostInACrashCountsFromNow() {
        assertThat(new Run(1000, 5000).since(new Run(4000, 8000))).isEqualTo(Run.NONE);
    }

    @Test
    void ranIsPartOfSteady() {
        assertThatThrownBy(() -> new Run(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property
    void whateverTheWallClockSaysADishNeverGetsAhead(@ForAll @LongRange(min = 0, max = 4_000_000) long start,
        @ForAll long wall,
        @ForAll @LongRange(min = 0, max = 100_000) long seconds) {
        var before = new Run(start, start);
        Run after = before.rested(wall % 1_000_000_000_000L).on(seconds * SECOND);
        assertThat(after.since(before).ranMillis()).isEqualTo(seconds * 1000);
        assertThat(after.since(before).steadyMillis()).isGreaterThanOrEqualTo(after.since(before).ranMillis());
    }
}
