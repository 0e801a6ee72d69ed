package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What scissors leave, by hand")
class CutReachTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    /** Centimetres kept, over the months it grew between the two; a rest takes from both ends what lies in it. */
    @ParameterizedTest(name = "cut {0} months ago to {1} cm, done {2} months ago, at rest since {3}: {4} cm a month")
    @CsvSource({ "10, 6, 22, 0, 0.5", "10, 6, 22, 4, 0.5", "1, 6, 13, 4, 0.6667", "1, 6, 5, 4, 6" })
    void escapesTheScissorsUpToThisRate(double cut, double cm, double done, double rest, double fastest) {
        assertThat(new CutReach.Limit(cut, cm).fastest(done, rest)).isCloseTo(fastest, within(1e-4));
    }

    @Test
    void onTheDayItselfTheScissorsCameFirstEvenOnAShavenHead() {
        assertThat(new CutReach.Limit(5, 0).fastest(5, 0)).isInfinite();
        assertThat(new CutReach.Limit(5, 6).fastest(4, 0)).isInfinite();
    }

    @Test
    void hairThatHasNotGrownSinceIsLeftOnAnyLengthButNone() {
        assertThat(new CutReach.Limit(1, 2).fastest(3, 4)).isInfinite();
        assertThat(new CutReach.Limit(1, 0).fastest(3, 4)).isZero();
    }

    /**
     * At 1 cm a month, done 24 months ago on 2 cm of new growth: a hair that rests since s months carries it from 24 − s to 26 − s cm.
     * 87 % do not rest, a quarter of the others each about half a month, one and a half, two and a half, three and a half.
     */
    @ParameterizedTest(name = "at {0} cm {1}")
    @CsvSource({ "20.3, 0", "21, 0.0325", "22, 0.065", "23.3, 0.065", "23.7, 0.065", "25, 0.9025", "25.75, 0.87",
        "26.5, 0" })
    void aBandAfterACutThatTookNothing(double cm, double share) {
        LocalDate day = TODAY.minusDays(Math.round(24 * Growth.DAYS_A_MONTH));
        Treatment dye =
            Treatment.once(Residue.OXIDATIVE, day, day, Zone.REGROWTH, "Dye").reaching(new Range(2, 2));
        Lane lane = StrandMap.of(new HairHistory(HairLength.measured(60), List.of(dye),
            List.of(new Cut(TODAY, 299)), new Growth(1, 1)), TODAY).lanes().get(0);
        assertThat(lane.chanceAt(cm)).isCloseTo(share, within(0.03));
    }
}
