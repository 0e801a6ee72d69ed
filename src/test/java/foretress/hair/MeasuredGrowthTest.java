package foretress.hair;

import static foretress.hair.StrandSample.TODAY;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a growth measured on this client, or one that nobody can bound, changes in what is said. */
class MeasuredGrowthTest {
    /** 24 months before the day of the map: the safe side counts 20 of them. */
    private static final LocalDate TWO_YEARS = TODAY.minusDays((long) Math.floor(24 * Growth.DAYS_A_MONTH));
    private static final Growth QUICK = new Growth(1.0, 1.2);

    private static StrandMap map(Residue residue, LocalDate day, double cm, Growth growth, boolean slowed) {
        Treatment done = Treatment.once(residue, day, day, Zone.WHOLE, "Done");
        return StrandMap.of(new HairHistory(HairLength.measured(cm), List.of(done), List.of(), growth, slowed), TODAY);
    }

    private static StrandMap permed(Growth growth) {
        return map(Residue.PERMED, TWO_YEARS, 40, growth, false);
    }

    private static String measured(StrandMap map) throws IOException {
        return StrandSample.words("en").measured(map, map.lanes().get(0));
    }

    /** By hand: 0.5 · 20 = 10 cm on the safe side, 1.0 · 20 = 20 cm (less a day's rounding) by the lowest rate measured. */
    @Test
    @DisplayName("a growth measured on this client gives a second, marked figure, and the safe one stays as it was")
    void aSecondFigureBesideTheSafeOne() throws IOException {
        Lane lane = permed(QUICK).lanes().get(0);
        assertThat(lane.cutToCm()).isEqualTo(permed(Growth.PUBLISHED).lanes().get(0).cutToCm()).contains(9);
        assertThat(lane.measuredCutToCm()).contains(19);
        assertThat(StrandSample.words("en").end(permed(QUICK), lane)).isEqualTo("gone if cut to 9 cm");
        assertThat(measured(permed(QUICK))).isEqualTo("by the growth measured here 19 cm");
    }

    @Test
    @DisplayName("it stands in the words of the map, beside the safe figure")
    void inTheList() throws IOException {
        assertThat(StrandSample.words("en").list(permed(QUICK)).get(1))
            .endsWith("gone if cut to 9 cm; by the growth measured here 19 cm");
    }

    @Test
    @DisplayName("where nothing was measured, and where the measured rate is the slow bound itself, there is no second figure")
    void nothingMoreToSay() throws IOException {
        assertThat(measured(permed(Growth.PUBLISHED))).isEmpty();
        assertThat(measured(permed(new Growth(Growth.SLOW, 0.7)))).isEmpty();
    }

    /** By hand: 15 cm at 1.0 cm a month and four months of rest are 19 months, on the safe side 34. */
    @Test
    @DisplayName("grown out by the measured growth, still there on the safe side: the month is said, and the safe side decides")
    void grownOutByTheMeasuredGrowthAlone() throws IOException {
        StrandMap map = map(Residue.METAL, TWO_YEARS, 15, QUICK, false);
        assertThat(map.lanes().get(0).metalSuspected()).isTrue();
        assertThat(map.lanes().get(0).measuredGrownOut())
            .contains(YearMonth.from(TWO_YEARS.plusDays((long) Math.ceil(19 * Growth.DAYS_A_MONTH))));
        assertThat(measured(map)).startsWith("by the growth measured here grown out by ");
    }

    @Test
    @DisplayName("colour that washes out has no second figure, for it has no first")
    void washingOut() throws IOException {
        assertThat(measured(map(Residue.WASHES_OUT, TWO_YEARS, 40, QUICK, false))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = { 24, 120, 360 })
    @DisplayName("hair loss: metal is never ruled out by time alone, and no length is promised free of it")
    void hairLossHasNoBound(int months) throws IOException {
        StrandMap map = map(Residue.METAL, TODAY.minusMonths(months), 20, Growth.PUBLISHED, true);
        Lane lane = map.lanes().get(0);
        assertThat(lane.metalSuspected()).isTrue();
        assertThat(lane.cutToCm()).isEmpty();
        assertThat(map.metalFreeCutCm()).isEmpty();
        assertThat(StrandSample.words("en").chance(map, lane)).isEqualTo("not known");
        assertThat(StrandSample.words("en").end(map, lane)).isEqualTo("counts, hair loss slows growth");
    }

    @Test
    @DisplayName("hair loss changes nothing for what holds no metal, and without it time still rules metal out")
    void onlyMetalOnlyHairLoss() {
        assertThat(map(Residue.PERMED, TWO_YEARS, 40, Growth.PUBLISHED, true).lanes().get(0).cutToCm()).contains(9);
        assertThat(map(Residue.METAL, TODAY.minusYears(30), 20, Growth.PUBLISHED, false).metalSuspected()).isFalse();
    }

    @Test
    @DisplayName("where some may be gone already, what is said of its place is said of what would be left")
    void conditionalAndUnconditionalBeginsAreToldApart() throws IOException {
        StrandMap perhaps = map(Residue.PERMED, TODAY.minusMonths(30), 25, Growth.PUBLISHED, false);
        assertThat(perhaps.lanes().get(0).chanceLeft()).isBetween(0.05, 0.95);
        assertThat(StrandSample.words("en").list(perhaps).get(1)).contains("if any is left, it begins ");
        StrandMap surely = map(Residue.PERMED, TODAY.minusMonths(3), 25, Growth.PUBLISHED, false);
        assertThat(StrandSample.words("en").list(surely).get(1)).contains("; begins ").doesNotContain("if any");
    }

    /** The published groups mixed and cut off at 0.5 and 1.4, summed in small steps: 0.975, not the 1.00 of the uncut mixture. */
    @Test
    @DisplayName("the mean of the distribution as it is cut off is 0.97 cm a month, as the page says")
    void theTruncatedMean() {
        double sum = 0;
        int steps = 9000;
        double step = (Growth.FAST - Growth.SLOW) / steps;
        for (int i = 0; i < steps; i++) {
            double rate = Growth.SLOW + (i + 0.5) * step;
            sum += rate * (Growth.published(rate + step / 2) - Growth.published(rate - step / 2));
        }
        assertThat(Math.round(100 * sum)).isEqualTo(97);
    }
}
