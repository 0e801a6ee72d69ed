package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrandProgressTest {
    private static final Pattern POINT = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");

    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({ "0, 8, 3.0", "1, 8, 11.1", "3, 8, 36.1", "8, 8, 98.6", "1, 1, 98.6" })
    void theHairEndsWhereTheNumberSays(int at, int topics, double percent) {
        assertThat(StrandProgress.grown(at, topics).tipPercent()).isEqualTo(percent == 3 ? "3%" : percent + "%");
    }

    @Test
    void everyTopicHasATickAndThePassedOnesAreDark() {
        List<StrandProgress.Tick> ticks = StrandProgress.grown(3, 8).ticks();
        assertThat(ticks).hasSize(8);
        assertThat(ticks.stream().map(StrandProgress.Tick::passed).toList())
            .isEqualTo(List.of(true, true, false, false, false, false, false, false));
    }

    @Test
    void theHairHangsWithinFivePxOfItsLineAndLeavesTheRootStraight() {
        List<Double> xs =
            POINT.matcher(StrandProgress.grown(8, 8).hair()).results().map(m -> Double.parseDouble(m.group(1)))
                .toList();
        assertThat(xs).allSatisfy(x -> assertThat(x).isBetween(20 - 5 - 1.8, 20 + 5 + 1.8));
        assertThat(xs.get(0)).isEqualTo(18.2);
        assertThat(xs.get(xs.size() - 1)).isEqualTo(21.8);
    }

    @Test
    void theHairTapers() {
        List<Double> points =
            POINT.matcher(StrandProgress.grown(5, 8).hair()).results().map(m -> Double.parseDouble(m.group(1)))
                .toList();
        int pairs = points.size() / 2;
        for (int i = 1; i < pairs; i++) {
            double here = points.get(points.size() - 1 - i) - points.get(i);
            double before = points.get(points.size() - i) - points.get(i - 1);
            assertThat(here).isLessThanOrEqualTo(before + 0.11); // a tenth of a px is what rounding gives away
        }
    }

    @Test
    void nothingLiesAheadOfAHairThatIsDone() {
        assertThat(StrandProgress.grown(8, 8).ahead()).isEmpty();
        assertThat(StrandProgress.grown(7, 8).ahead()).isNotEmpty();
    }

    @Test
    void aShareBeyondTheDayStopsAtItsEnd() {
        assertThat(StrandProgress.share(1.7, 4)).isEqualTo(StrandProgress.share(1, 4));
        assertThat(StrandProgress.share(-0.2, 4).tip()).isEqualTo(30);
    }

    @Test
    void noStrandHasMoreTopicsPassedThanThereAre() {
        assertThatThrownBy(() -> StrandProgress.grown(9, 8)).hasMessage("no strand has topic 9 of 8");
        assertThatThrownBy(() -> StrandProgress.grown(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
