package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Done 24 months ago on hair that grows 1 cm a month: 87 of 100 hairs carry it from 24 cm on, the others from anywhere between 20 and 24. */
@DisplayName("Where a lane begins and ends, by hand for one rate")
class LaneEdgesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final LocalDate DAY = TODAY.minusDays(Math.round(24 * Growth.DAYS_A_MONTH));

    private static Lane lane(double cm, Treatment treatment) {
        return StrandMap.of(new HairHistory(HairLength.measured(cm), List.of(treatment), List.of(), new Growth(1, 1)),
            TODAY).lanes().get(0);
    }

    private static Treatment done(Zone zone) {
        return Treatment.once(Residue.OXIDATIVE, DAY, DAY, zone, "Dye");
    }

    private static void isAbout(Range range, double from, double to) {
        assertThat(range.fromCm()).isCloseTo(from, within(0.03));
        assertThat(range.toCm()).isCloseTo(to, within(0.03));
    }

    /** A tenth of all hairs are 10 of the 13 that rest: 24 − 4 · (1 − 10 / 13) cm. */
    @Test
    void beginsBetweenTheFirstTenthOfTheHairsAndNineTenths() {
        isAbout(lane(42, done(Zone.WHOLE)).starts().orElseThrow(), 23.08, 24);
    }

    /** On 23.5 cm 11.375 in 100 carry any: a tenth of these lie within 20.35 cm, nine tenths within 23.15. */
    @Test
    void onShorterHairItIsATenthOfThoseThatStillCarryAny() {
        isAbout(lane(23.5, done(Zone.WHOLE)).starts().orElseThrow(), 20.35, 23.15);
    }

    @Test
    void aBandOfTwoCentimetresEndsTwoCentimetresFurtherOut() {
        Lane band = lane(42, done(Zone.REGROWTH).reaching(new Range(2, 2)));
        isAbout(band.starts().orElseThrow(), 23.08, 24);
        isAbout(band.reaches().orElseThrow(), 25.08, 26);
    }

    @Test
    void theLastPlaceIsTheTipItself() {
        Lane lane = lane(23, done(Zone.WHOLE));
        assertThat(lane.chanceAt(23)).isCloseTo(0.0975, within(0.001));
        assertThat(lane.chanceAt(22.75)).isCloseTo(0.0894, within(0.001));
    }

    /** 0.5 cm a month for twenty months on the safe side: 10 cm, where no hair that grows so fast can carry any. */
    @Test
    void fromTheSafeEdgeOnOneHairIsShown() {
        Lane lane = lane(42, done(Zone.WHOLE));
        assertThat(lane.chanceAt(lane.nearCm())).isZero();
        assertThat(lane.hairsAt(lane.nearCm())).isEqualTo(1);
        assertThat(lane.hairsAt(lane.nearCm() - 0.01)).isZero();
    }

    /** On 15 cm all has grown out by the growth measured here. The picture shows none; the safe side counts it all the same. */
    @Test
    void whatHasGrownOutByTheMeasuredGrowthIsNotDrawnAndStillCounts() {
        Lane lane = lane(15, done(Zone.WHOLE));
        assertThat(lane.chanceLeft()).isZero();
        assertThat(lane.hairsAt(12)).isZero();
        assertThat(lane.safetyChance()).isEqualTo(1);
    }
}
