package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Closed forms of where hair has grown to, against plain sums over days and rests")
class GrownTest {
    private static final Growth ONE_A_MONTH = new Growth(1, 1);
    private static final int PARTS = 80;
    private static final double LONG_REST = Reach.LONG_REST_MONTHS;

    /** The same chance as a sum: each day and each rest in the middle of its part. */
    private record Summed(double newest, double oldest, double more) {
        double within(double cm) {
            double resting = 0;
            for (int i = 0; i < PARTS; i++) {
                resting += within(cm, (i + 0.5) * Growth.REST_MONTHS / PARTS) / PARTS;
            }
            return (1 - Growth.RESTING_SHARE) * within(cm, 0) + Growth.RESTING_SHARE * resting;
        }

        double within(double cm, double rest) {
            double sum = 0;
            for (int i = 0; i < PARTS; i++) {
                double months = newest + (i + 0.5) * (oldest - newest) / PARTS;
                sum += rateAtMost(cm / (Math.max(0, months - rest) + more)) / PARTS;
            }
            return sum;
        }

        private static double rateAtMost(double cmAMonth) {
            return Growth.published(Math.max(Growth.SLOW, Math.min(Growth.FAST, cmAMonth)));
        }
    }

    @ParameterizedTest(name = "{0} to {1} months ago, {2} months of growth away")
    @CsvSource({ "0, 0.5, 0", "1, 3, 0", "1, 3, 1.5", "2, 9, 0", "2, 9, 2", "2, 2, 0", "2, 2, 1.5", "5, 5, 0",
        "24, 24, 2",
        "30, 50, 2.5" })
    void theClosedFormIsTheSum(double newest, double oldest, double more) {
        Grown grown = new Grown(Rates.PUBLISHED, newest, oldest, more);
        Summed summed = new Summed(newest, oldest, more);
        double furthest = Growth.FAST * (oldest + more);
        for (double cm = furthest / 40; cm < 1.1 * furthest; cm += furthest / 20) {
            assertThat(grown.chanceWithin(cm)).as("within %s cm", cm).isCloseTo(summed.within(cm), within(0.003));
            assertThat(grown.chanceWithin(cm, LONG_REST)).as("rested for long, within %s cm", cm)
                .isCloseTo(summed.within(cm, LONG_REST), within(0.006));
        }
    }

    /** At 1 cm a month and 10 months ago, a month and a half away: 87 % at 11.5 cm; of those at rest half between 7.5 and 9.5. */
    @Test
    void oneRateAndOneDayByHand() {
        Grown grown = new Grown(Rates.of(ONE_A_MONTH), 10, 10, 1.5);
        assertThat(grown.chanceWithin(7.4)).isZero();
        assertThat(grown.chanceWithin(9.5)).isCloseTo(0.065, within(1e-9));
        assertThat(grown.chanceWithin(11.4)).isCloseTo(0.13 * 3.9 / 4, within(1e-9));
        assertThat(grown.chanceWithin(11.5)).isEqualTo(1);
        assertThat(grown.chanceWithin(9.4, 2)).isZero();
        assertThat(grown.chanceWithin(9.5, 2)).isEqualTo(1);
    }

    @Test
    void whatWasDoneTodayLiesAtTheScalpAndNothingLiesBelowIt() {
        Grown today = new Grown(Rates.PUBLISHED, 0, 0, 0);
        assertThat(today.chanceWithin(0)).isEqualTo(1);
        assertThat(today.chanceWithin(-0.01)).isZero();
    }

    /** g is 1 up to the time a centimetre takes at that rate, that time too, and 0 from there on. */
    @Test
    void oneRateIsReachedExactlyAtItsOwnTime() {
        Rates one = Rates.of(ONE_A_MONTH);
        assertThat(one.g(1)).isEqualTo(1);
        assertThat(one.g(1.001)).isZero();
    }
}
