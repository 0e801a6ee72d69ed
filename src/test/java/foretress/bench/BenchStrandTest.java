package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The running clock drawn as a hair that grows from 0 to 1000")
class BenchStrandTest {
    private static final long FULL = MetalCheck.FULL_SECONDS;

    private static BenchStrand at(long gone, BenchStrand.Seen... seen) {
        return BenchStrand.of(gone, FULL, List.of(seen));
    }

    private static double farthest(String path) {
        Matcher point = Pattern.compile("([-0-9.]+) ([-0-9.]+) ").matcher(path.replaceAll("[MZ]", ""));
        double farthest = 0;
        while (point.find()) {
            farthest = Math.max(farthest, Double.parseDouble(point.group(1)));
        }
        return farthest;
    }

    @Test
    void theHairReachesAsFarAsTheTimeThatIsGoneAndTheRestLiesAhead() {
        assertThat(farthest(at(FULL / 2).hair())).isEqualTo(500);
        assertThat(at(FULL / 2).ahead()).startsWith("M520 34 ").endsWith("980 34 ");
        assertThat(farthest(at(FULL).hair())).isEqualTo(1000);
        assertThat(at(FULL).ahead()).isEmpty();
    }

    @Test
    void itIsSeenFromTheStartAndNeverGrowsBeyondTheEnd() {
        assertThat(farthest(at(0).hair())).isEqualTo(30);
        assertThat(farthest(at(2 * FULL).hair())).isEqualTo(1000);
    }

    @Test
    void itIsAClosedShapeThickAtTheRootAndThinAtTheTip() {
        String hair = at(FULL).hair();
        assertThat(hair).startsWith("M0 30.8 ").endsWith("0 37.2 Z");
        assertThat(hair.chars().filter(letter -> letter == 'M')).hasSize(1);
    }

    @Test
    void whatWasSeenStandsWhereItWasSeen() {
        assertThat(at(FULL, new BenchStrand.Seen(450, "A"), new BenchStrand.Seen(2 * FULL, "B")).marks())
            .containsExactly(new BenchStrand.Mark("250", "A"), new BenchStrand.Mark("1000", "B"));
    }

    @Test
    void theRuleCountsFiveMinutesOrHalfHoursWhereItIsLong() {
        assertThat(at(0).ticks()).extracting(BenchStrand.Tick::minutes).containsExactly("0", "5", "10", "15", "20",
            "25", "30");
        assertThat(at(0).ticks()).extracting(BenchStrand.Tick::x).containsExactly("0", "166.7", "333.3", "500",
            "666.7", "833.3", "1000");
        assertThat(at(0).ticks()).extracting(BenchStrand.Tick::anchor).containsExactly("start", "middle", "middle",
            "middle", "middle", "middle", "end");
        assertThat(BenchStrand.of(0, 3600, List.of()).ticks()).hasSize(13);
        assertThat(BenchStrand.of(0, 7200, List.of()).ticks()).extracting(BenchStrand.Tick::minutes)
            .containsExactly("0", "30", "60", "90", "120");
    }
}
