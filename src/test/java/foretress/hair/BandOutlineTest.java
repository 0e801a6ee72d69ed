package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.hair.StrandDrawing.Point;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BandOutlineTest {
    private static final double PX_A_CM = 30;

    /** Thickness of the drawn band at a place: how far the outline reaches above and below the middle, in hairs. */
    private static long hairsDrawn(Lane lane, double lengthCm, double cm) {
        List<List<Point>> outlines = new BandOutline(lane, lengthCm, 0, PX_A_CM, 0).outlines();
        double thick = 0;
        for (double y = -11.9; y < 12; y += 0.2) {
            for (List<Point> outline : outlines) {
                thick += inside(outline, cm * PX_A_CM, y) ? 0.2 : 0;
            }
        }
        return Math.round(thick / 2.4);
    }

    private static boolean inside(List<Point> polygon, double x, double y) {
        boolean in = false;
        for (int i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            Point a = polygon.get(i);
            Point b = polygon.get(j);
            if (a.y() > y != b.y() > y && x < (b.x() - a.x()) * (y - a.y()) / (b.y() - a.y()) + a.x()) {
                in = !in;
            }
        }
        return in;
    }

    @ParameterizedTest
    @EnumSource(Zone.class)
    void asManyHairsAreDrawnAsChancesInTen(Zone zone) {
        Lane lane = StrandSample.map(HairLength.measured(50), StrandSample.ago(Residue.METAL, 24, zone)).lanes().get(0);
        for (double cm = 0.5; cm < 50; cm += 1) {
            int chances = lane.hairsAt(cm);
            long drawn = hairsDrawn(lane, 50, cm);
            // points and notches take up to a quarter of a centimetre, so a step may show one hair early or late
            boolean steady = lane.hairsAt(cm - 0.3) == chances && lane.hairsAt(cm + 0.3) == chances;
            if (steady) {
                assertThat(drawn).as("%s at %s cm", zone, cm).isEqualTo(chances == 1 ? 2 : chances);
            }
        }
    }

    @Test
    void nothingIsDrawnWhereNothingCanBe() {
        Lane lane =
            StrandSample.map(HairLength.measured(5), StrandSample.ago(Residue.METAL, 60, Zone.WHOLE)).lanes().get(0);
        assertThat(new BandOutline(lane, 5, 0, PX_A_CM, 0).outlines()).isEmpty();
    }

    @Test
    void theFirstHairBeginsAtTheSafeEdge() {
        Lane lane =
            StrandSample.map(HairLength.measured(50), StrandSample.ago(Residue.METAL, 30, Zone.WHOLE)).lanes().get(0);
        double first = new BandOutline(lane, 50, 0, PX_A_CM, 0).outlines().get(0).stream().mapToDouble(Point::x).min()
            .orElseThrow();
        assertThat(first / PX_A_CM).isEqualTo(lane.nearCm());
        assertThat(first / PX_A_CM).isGreaterThanOrEqualTo(lane.cutToCm().orElseThrow());
    }
}
