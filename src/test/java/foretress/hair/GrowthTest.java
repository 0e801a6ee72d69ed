package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrowthTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    /** Loussouarn 2005 (280, 367, 411 ± 50 µm a day), a month being 365.25 / 12 days. */
    @ParameterizedTest(name = "{0} µm a day are {1} mm a month")
    @CsvSource({ "280, 8.52", "367, 11.17", "411, 12.51" })
    void publishedDailyGrowthInMonths(double micrometres, double millimetres) {
        assertThat(Growth.cmAMonth(micrometres) * 10).isCloseTo(millimetres, within(0.02));
    }

    /** Loussouarn 2005: 280 ± 50 µm a day, mean less two deviations. */
    @Test
    void slowEndOfTheSlowestGroupOf2005() {
        assertThat(Growth.cmAMonth(280 - 2 * 50) * 10).isCloseTo(5.48, within(0.02));
    }

    /** Forensic hair-testing sheet: 1.0 cm a month, range 0.6 to 1.4. */
    @ParameterizedTest(name = "{0} cm a month are {1} µm a day")
    @CsvSource({ "0.6, 197", "1.0, 329", "1.4, 460" })
    void forensicRatesInMicrometres(double cm, double micrometres) {
        assertThat(Growth.micrometresADay(cm)).isCloseTo(micrometres, within(1.0));
    }

    /** Arithmetic at the forensic sheet's three rates. */
    @ParameterizedTest(name = "six months at {0} cm a month")
    @CsvSource({ "0.6, 3.6", "1.0, 6.0", "1.4, 8.4" })
    void halfAYearOfNewGrowth(double rate, double cm) {
        assertThat(Growth.newGrowth(rate, 6)).isCloseTo(cm, within(1e-9));
    }

    /** The trade's half inch a month against the means of Loussouarn 2005: 47 % and 12 % too much. */
    @ParameterizedTest(name = "the trade figure exceeds {0} µm a day by {1} %")
    @CsvSource({ "280, 47", "367, 12" })
    void tradeFigureMakesResidueLookFurtherOutThanItIs(double micrometres, double percent) {
        assertThat(100 * (1.25 / Growth.cmAMonth(micrometres) - 1)).isCloseTo(percent, within(0.5));
    }

    /** Length over rate, at the forensic sheet's three rates. */
    @ParameterizedTest(name = "the tip of 40 cm at {0} cm a month is {1} months old")
    @CsvSource({ "0.6, 67", "1.0, 40", "1.4, 29" })
    void ageOfTheTip(double rate, double months) {
        assertThat(Growth.tipAge(rate, 40)).isCloseTo(months, within(1.0));
    }

    /** Two years at the forensic sheet's slow and fast rate: 14.4 cm clean of 20, or all of it. */
    @Test
    void twoYearsOfGrowthLeaveTheEndsOfTwentyCentimetresInDoubt() {
        assertThat(Growth.newGrowth(0.6, 24)).isCloseTo(14.4, within(1e-9)).isLessThan(20);
        assertThat(Growth.newGrowth(1.4, 24)).isCloseTo(33.6, within(1e-9)).isGreaterThan(20);
    }

    @Test
    void lookBackHasNoCapAndFourMonthsOfRest() {
        assertThat(Growth.lookBackMonths(40)).isEqualTo(84);
        assertThat(Growth.lookBackMonths(120)).isEqualTo(244);
    }

    @Test
    void newGrowthNeverShrinksAndKeepsItsOrder() {
        for (double months = 0; months < 400; months += 0.5) {
            assertThat(Growth.safeNearEdge(months + 0.5)).isGreaterThanOrEqualTo(Growth.safeNearEdge(months));
            assertThat(Growth.newGrowth(Growth.SLOW, months))
                .isLessThanOrEqualTo(Growth.newGrowth(Growth.CENTRAL, months));
            assertThat(Growth.newGrowth(Growth.CENTRAL, months))
                .isLessThanOrEqualTo(Growth.newGrowth(Growth.FAST, months));
        }
    }

    @ParameterizedTest(name = "after {0} months the safe near edge is {1} cm")
    @CsvSource({ "0, 0", "3.99, 0", "4, 0", "4.02, 0.01", "16, 6" })
    void nearEdgeStaysAtTheScalpForFourMonths(double months, double cm) {
        assertThat(Growth.safeNearEdge(months)).isCloseTo(cm, within(1e-9));
    }

    @Test
    void noRateOutsideThePublishedRange() {
        assertThat(Growth.PUBLISHED.chanceAtMost(0.4999)).isZero();
        assertThat(Growth.PUBLISHED.chanceAtMost(0.5)).isZero();
        assertThat(Growth.PUBLISHED.chanceAtMost(1.4)).isEqualTo(1);
        assertThatThrownBy(() -> new Growth(0.49, 1)).hasMessageContaining("outside 0.5 to 1.4");
    }

    @Test
    void middleOfTheDistributionIsTheCentralRate() {
        assertThat(Growth.PUBLISHED.chanceAtMost(Growth.CENTRAL)).isBetween(0.45, 0.60);
    }

    @Test
    void aMeasuredBandNarrowsTheRate() {
        Growth measured = Growth.measured(2.0, TODAY.minusDays(61), TODAY);
        assertThat(measured.lowest()).isCloseTo(0.85, within(0.01));
        assertThat(measured.highest()).isCloseTo(1.15, within(0.01));
    }

    @Test
    void aMeasuredBandNeverLeavesThePublishedRange() {
        assertThat(Growth.measured(0.1, TODAY.minusDays(61), TODAY)).isEqualTo(new Growth(0.5, 0.5));
        assertThat(Growth.measured(9.0, TODAY.minusDays(61), TODAY)).isEqualTo(new Growth(1.4, 1.4));
    }

    @Test
    void lessThanEightWeeksMeasureNothing() {
        assertThat(Growth.measured(1.5, TODAY.minusDays(55), TODAY)).isEqualTo(Growth.PUBLISHED);
        assertThat(Growth.measured(1.5, TODAY.minusDays(56), TODAY)).isNotEqualTo(Growth.PUBLISHED);
    }

    /** Standard normal table: Φ(0) = 0.5, Φ(1) = 0.841345, Φ(1.96) = 0.975002, Φ(−2.3263) = 0.01 (from memory). */
    @ParameterizedTest(name = "below {0}: {1}")
    @CsvSource({ "0, 0.5", "1, 0.841345", "1.96, 0.975002", "-2.3263, 0.010000" })
    void normalTable(double z, double below) {
        assertThat(Normal.below(z)).isCloseTo(below, within(2e-6));
    }

    /** 61 days are two months: 1.0 cm at the slowest published rate, 2.8 cm at the fastest, each read 0.3 cm wrong. */
    @ParameterizedTest(name = "{0} cm of new growth after {1} days: {2}")
    @CsvSource({ "0.71, 61, true", "0.70, 61, false", "3.10, 61, true", "3.11, 61, false", "0.3, 0, true",
        "0.31, 0, false", "0, 18, true", "0, 19, false" })
    void aBandThatNoHairGrowsSoFastOrSoSlowlyIsNotPlausible(double cm, int days, boolean plausible) {
        assertThat(Growth.plausible(cm, TODAY.minusDays(days), TODAY)).isEqualTo(plausible);
    }

    @Test
    void nobodyGrowsMoreSlowlyThanTheSlowestOfThemAndEverybodyAtMostAsFastAsTheFastest() {
        var narrow = new Growth(0.8, 1.2);
        assertThat(narrow.chanceAtMost(0.8)).isZero();
        assertThat(narrow.chanceAtMost(0.81)).isBetween(0.001, 0.1);
        assertThat(narrow.chanceAtMost(1.19)).isBetween(0.9, 0.999);
        assertThat(narrow.chanceAtMost(1.2)).isEqualTo(1);
        assertThat(new Growth(1, 1).chanceAtMost(1)).isEqualTo(1);
        assertThat(new Growth(1, 1).chanceAtMost(0.999)).isZero();
    }
}
