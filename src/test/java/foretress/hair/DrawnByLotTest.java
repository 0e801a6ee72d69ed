package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Repeated treatments, cuts and a measured rate against clients drawn by lot. The stated chances must lie within five standard
 * errors of the share drawn, 5 √(p(1 − p)/n) ≤ 2.5/√n, here 0.0125, and half a per cent more for sums in steps.
 */
class DrawnByLotTest {
    private static final int CLIENTS = 40_000;
    private static final double TOLERANCE = 2.5 / Math.sqrt(CLIENTS) + 0.005;
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final double MONTH = 30.4375;
    private static final double LENGTH_CM = 45;
    private static final double[][] GROUPS = { { 280, 50 }, { 367, 56 }, { 411, 53 }, { 256, 44 } };

    private final Random lot = new Random(20261125);

    /** A treated hair today: its stretch, and whether it escaped the scissors. */
    private record Hair(double near, double far, boolean left) {
        boolean covers(double cm) {
            return left && near <= cm && cm <= far;
        }
    }

    private interface Drawing {
        Hair hair();
    }

    private static LocalDate day(int daysAgo) {
        return TODAY.minusDays(daysAgo);
    }

    private double rate(Growth growth) {
        while (true) {
            double[] group = GROUPS[lot.nextInt(GROUPS.length)];
            double rate = (group[0] + group[1] * lot.nextGaussian()) * MONTH / 10_000;
            if (rate >= growth.lowest() && rate <= growth.highest()) {
                return rate;
            }
        }
    }

    private double rested() {
        return lot.nextDouble() < 0.13 ? 4 * lot.nextDouble() : 0;
    }

    private double between(int fromDaysAgo, int toDaysAgo) {
        return (toDaysAgo + lot.nextDouble() * (fromDaysAgo - toDaysAgo)) / MONTH;
    }

    private void agrees(Lane lane, Drawing drawing) {
        int[] found = new int[(int) LENGTH_CM + 1];
        for (int i = 0; i < CLIENTS; i++) {
            Hair hair = drawing.hair();
            for (int cm = 0; cm <= LENGTH_CM; cm++) {
                found[cm] += hair.covers(cm) ? 1 : 0;
            }
        }
        for (int cm = 0; cm <= LENGTH_CM; cm++) {
            assertThat(lane.chanceAt(cm)).as("at %d cm", cm).isCloseTo((double) found[cm] / CLIENTS, within(TOLERANCE));
        }
    }

    private static Lane lane(Treatment treatment, Growth growth, Cut... cuts) {
        return StrandMap
            .of(new HairHistory(HairLength.measured(LENGTH_CM), List.of(treatment), List.of(cuts), growth), TODAY)
            .lanes().get(0);
    }

    private static double stretched(double rate, double months, double rested) {
        return rate * Math.max(0, months - rested);
    }

    /** New growth touched up each time since two to three years ago, the last time in the spring: each touch-up joins the next. */
    @Test
    void touchUpsSinceAnUncertainFirstTime() {
        Treatment dye =
            Treatment.once(Residue.OXIDATIVE, day(150), day(60), Zone.REGROWTH, "Dye").since(day(1095), day(730), 1.6);
        agrees(lane(dye, Growth.PUBLISHED), () -> {
            double rate = rate(Growth.PUBLISHED);
            double rested = rested();
            double first = between(1095, 730);
            double before = 1 + 2 * lot.nextDouble();
            return new Hair(stretched(rate, between(150, 60), rested), stretched(rate, first, rested) + rate * before,
                true);
        });
    }

    @Test
    void touchUpsOfAClientWhoseGrowthWasMeasured() {
        Growth measured = Growth.measured(2.4, day(91), TODAY);
        Treatment dye =
            Treatment.once(Residue.OXIDATIVE, day(150), day(60), Zone.REGROWTH, "Dye").since(day(800), day(700), 1.6);
        agrees(lane(dye, measured), () -> {
            double rate = rate(measured);
            double rested = rested();
            double before = 1 + 2 * lot.nextDouble();
            return new Hair(stretched(rate, between(150, 60), rested),
                stretched(rate, between(800, 700), rested) + rate * before, true);
        });
    }

    @Test
    void aTreatmentOfTheLastMonthsAndAMeasuredSlowRate() {
        Growth measured = Growth.measured(1.6, day(91), TODAY);
        Treatment dye = Treatment.once(Residue.OXIDATIVE, day(200), day(10), Zone.LENGTHS_ENDS, "Dye");
        agrees(lane(dye, measured),
            () -> new Hair(stretched(rate(measured), between(200, 10), rested()) + 3 * lot.nextDouble(), LENGTH_CM,
                true));
    }

    /** A cut to 14 cm thirteen months ago, after some of the days the lotion can have been used on and before others. */
    @Test
    void aCutInTheMiddleOfTheDaysItCanHaveBeen() {
        Treatment lotion = Treatment.once(Residue.METAL, day(1200), day(200), Zone.WHOLE, "Lotion");
        agrees(lane(lotion, Growth.PUBLISHED, new Cut(day(400), 14)), () -> {
            double rate = rate(Growth.PUBLISHED);
            double rested = rested();
            double done = between(1200, 200);
            double cut = 400 / MONTH;
            double near = stretched(rate, done, rested);
            boolean left = done < cut || near - stretched(rate, cut, rested) < 14;
            return new Hair(near, LENGTH_CM, left);
        });
    }

    /** Two cuts after a series of touch-ups. */
    @Test
    void touchUpsWithTwoCutsSince() {
        Treatment dye = Treatment.once(Residue.OXIDATIVE, day(760), day(760), Zone.REGROWTH, "Dye").since(day(1400),
            day(1400), 1.6);
        agrees(lane(dye, Growth.PUBLISHED, new Cut(day(500), 8), new Cut(day(90), 22)), () -> {
            double rate = rate(Growth.PUBLISHED);
            double rested = rested();
            double near = stretched(rate, 760 / MONTH, rested);
            boolean left =
                near - stretched(rate, 500 / MONTH, rested) < 8 && near - stretched(rate, 90 / MONTH, rested) < 22;
            return new Hair(near, stretched(rate, 1400 / MONTH, rested) + rate * (1 + 2 * lot.nextDouble()), left);
        });
    }

    /** What is stated as the middle eight tenths of the near edge holds eight tenths of the clients whose hair still has some. */
    @ParameterizedTest
    @CsvSource({ "900, 535", "2000, 1700" })
    void theRangeHoldsEightInTen(int earliest, int latest) {
        Treatment lotion = Treatment.once(Residue.METAL, day(earliest), day(latest), Zone.WHOLE, "Lotion");
        Range starts = lane(lotion, Growth.PUBLISHED).starts().orElseThrow();
        int there = 0;
        int below = 0;
        int above = 0;
        for (int i = 0; i < CLIENTS; i++) {
            double near = stretched(rate(Growth.PUBLISHED), between(earliest, latest), rested());
            there += near <= LENGTH_CM ? 1 : 0;
            below += near < starts.fromCm() ? 1 : 0;
            above += near > starts.toCm() && near <= LENGTH_CM ? 1 : 0;
        }
        assertThat((double) below / there).isCloseTo(0.1, within(TOLERANCE));
        assertThat((double) above / there).isCloseTo(0.1, within(TOLERANCE));
    }

    /** The far edge of new growth, the same way: the first and the last tenth of clients lie outside what is stated. */
    @Test
    void theRangeOfTheFarEdgeHoldsEightInTen() {
        Treatment dye = Treatment.once(Residue.OXIDATIVE, day(500), day(300), Zone.REGROWTH, "Dye");
        Range reaches = lane(dye, Growth.PUBLISHED).reaches().orElseThrow();
        int below = 0;
        int above = 0;
        for (int i = 0; i < CLIENTS; i++) {
            double rate = rate(Growth.PUBLISHED);
            double far = stretched(rate, between(500, 300), rested()) + rate * (1 + 2 * lot.nextDouble());
            below += far < reaches.fromCm() ? 1 : 0;
            above += far > reaches.toCm() ? 1 : 0;
        }
        assertThat((double) below / CLIENTS).isCloseTo(0.1, within(TOLERANCE));
        assertThat((double) above / CLIENTS).isCloseTo(0.1, within(TOLERANCE));
    }

    /** No client drawn, however slow, has any left beyond the length we say to cut to but in five of a hundred; we say none. */
    @Test
    void cutToTheLengthItSaysAndNobodyHasAnyLeft() {
        Treatment lotion = Treatment.once(Residue.METAL, day(900), day(535), Zone.WHOLE, "Lotion");
        int cut = lane(lotion, Growth.PUBLISHED).cutToCm().orElseThrow();
        for (int i = 0; i < CLIENTS; i++) {
            assertThat(stretched(rate(Growth.PUBLISHED), between(900, 535), rested())).isGreaterThan(cut);
        }
    }

    /** The closed form against the same sum taken in small steps of day, rest and rate. */
    @Test
    void theClosedFormIsTheSumItStandsFor() {
        double[][] spans = { { 0, 0 }, { 0, 2 }, { 3, 3 }, { 2, 9 }, { 10, 10.03 }, { 24, 36 }, { 0, 60 } };
        for (Growth growth : List.of(Growth.PUBLISHED, new Growth(0.7, 0.9), new Growth(1, 1))) {
            for (double[] span : spans) {
                for (double more : new double[] { 0, 2 }) {
                    var grown = new Grown(Rates.of(growth), span[0], span[1], more);
                    for (double cm = 0.5; cm < 60; cm += 3.7) {
                        assertThat(grown.chanceWithin(cm))
                            .as("%s, %s to %s and %s months, %s cm", growth, span[0], span[1], more, cm)
                            .isCloseTo(summed(growth, span, more, cm), within(0.006));
                    }
                }
            }
        }
    }

    private static double summed(Growth growth, double[] span, double more, double cm) {
        int steps = 200;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double months = span[0] + (i + 0.5) * (span[1] - span[0]) / steps;
            sum += 0.87 * growth.chanceAtMost(cm / Math.max(1e-9, months + more));
            for (int k = 0; k < steps; k++) {
                double grew = Math.max(0, months - 4 * (k + 0.5) / steps) + more;
                sum += 0.13 / steps * growth.chanceAtMost(cm / Math.max(1e-9, grew));
            }
        }
        return sum / steps;
    }

    /** About three centimetres of new growth, once: they lie where the scalp of that day got to, and three centimetres on. */
    @Test
    void newGrowthOfWhichSomebodyKnowsTheCentimetres() {
        Treatment dye = Treatment.once(Residue.OXIDATIVE, day(400), day(300), Zone.REGROWTH, "Dye")
            .reaching(new Range(2.5, 4));
        agrees(lane(dye, Growth.PUBLISHED), () -> newGrowth(false));
        agrees(lane(dye, Growth.PUBLISHED, new Cut(day(90), 9)), () -> newGrowth(true));
    }

    private Hair newGrowth(boolean cut) {
        double rate = rate(Growth.PUBLISHED);
        double rested = rested();
        double near = stretched(rate, between(400, 300), rested);
        return new Hair(near, near + 2.5 + 1.5 * lot.nextDouble(),
            !cut || near - stretched(rate, 90 / MONTH, rested) < 9);
    }

    /** About ten centimetres of the ends: never nearer than that to today's, nor nearer than the hair has grown since. */
    @Test
    void endsOfWhichSomebodyKnowsTheCentimetres() {
        Treatment dye = Treatment.once(Residue.LIGHTENED, day(1300), day(900), Zone.ENDS, "Bleach")
            .reaching(new Range(7.5, 12.5));
        agrees(lane(dye, Growth.PUBLISHED),
            () -> new Hair(Math.max(stretched(rate(Growth.PUBLISHED), between(1300, 900), rested()),
                LENGTH_CM - 7.5 - 5 * lot.nextDouble()), LENGTH_CM, true));
    }
}
