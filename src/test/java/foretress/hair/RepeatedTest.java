package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatedTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    private static LocalDate ago(double months) {
        return TODAY.minusDays(Math.round(months * Growth.DAYS_A_MONTH));
    }

    private static Treatment touchUps(double last) {
        return Treatment.once(Residue.OXIDATIVE, ago(last), ago(last), Zone.REGROWTH, "Dye").againAndAgain();
    }

    private static Lane lane(double cm, Treatment... treatments) {
        return StrandMap.of(HairHistory.of(HairLength.measured(cm), List.of(treatments)), TODAY).lanes()
            .get(treatments.length - 1);
    }

    /**
     * By hand: every six weeks, first 24 months ago, last one month ago. Near edge at the slowest 0.5 cm a month and four months of
     * rest: 0. Far edge at the fastest 1.4 cm a month, 24 + 3 months: 37.8 cm. Rates of the forensic hair-testing sheet.
     */
    @Test
    void everySixWeeksForTwoYearsLiesBetweenTheNewestNearEdgeAndTheFarEdgeOfTheFirst() {
        Lane dye = lane(60, touchUps(1).since(ago(24), ago(24), 1.5));
        assertThat(dye.nearCm()).isZero();
        assertThat(dye.farCm()).isCloseTo(37.8, within(0.05));
        assertThat(dye.chanceAt(38)).isZero();
        assertThat(dye.chanceAt(10)).isCloseTo(1, within(0.01));
        assertThat(dye.cutToCm()).isEmpty();
    }

    @Test
    void aPauseLongerThanATouchUpMayHaveGrownBeforeTheFirstTime() {
        assertThat(lane(90, touchUps(1).since(ago(24), ago(24), 18)).farCm()).isCloseTo(1.4 * (24 + 18), within(0.05));
    }

    @Test
    void theFirstTimeReachesBackToTheTreatmentBeforeIt() {
        Treatment before = Treatment.once(Residue.LIGHTENED, ago(40), ago(40), Zone.WHOLE, "Bleach");
        assertThat(lane(90, before, touchUps(1).since(ago(24), ago(24), 1.5)).farCm()).isCloseTo(1.4 * 40,
            within(0.05));
    }

    @Test
    void aFirstTimeNobodyKnowsReachesToTheTip() {
        Lane dye = lane(120, touchUps(1));
        assertThat(dye.farCm()).isEqualTo(120);
        assertThat(dye.chanceAt(120)).isCloseTo(1, within(1e-9));
    }

    @Test
    void whatCoveredAllOfItReachesToTheTipSinceWhenever() {
        Treatment lotion = Treatment.once(Residue.METAL, ago(6), ago(6), Zone.WHOLE, "Lotion");
        Lane series = lane(80, lotion.since(ago(30), ago(30), 1));
        for (int cm = 0; cm <= 80; cm++) {
            assertThat(series.chanceAt(cm)).isEqualTo(lane(80, lotion).chanceAt(cm));
        }
    }

    @Test
    void theSafeSideAsksForTheLastTimeAlone() {
        Treatment once = Treatment.once(Residue.METAL, ago(24), ago(24), Zone.REGROWTH, "Lotion");
        Treatment series = once.since(ago(120), ago(100), 1);
        assertThat(lane(20, series).safetyChance()).isEqualTo(lane(20, once).safetyChance()).isEqualTo(1);
        assertThat(lane(9, series).safetyChance()).isEqualTo(lane(9, once).safetyChance()).isZero();
        assertThat(lane(20, series).cutToCm()).isEqualTo(lane(20, once).cutToCm()).contains(10);
        assertThat(lane(20, series).grownOut()).isEqualTo(lane(20, once).grownOut());
    }

    @Test
    void aSeriesIsInOrder() {
        assertThatThrownBy(() -> new Series(ago(1), ago(2), 1)).hasMessageContaining("a first time between");
        assertThatThrownBy(() -> new Series(ago(2), ago(1), 0)).hasMessageContaining("0.0 months apart");
        assertThatThrownBy(() -> touchUps(6).since(ago(3), ago(3), 1)).hasMessageContaining("first done after");
    }
}
