package foretress.consent;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WeightShapesTest {
    private static final int SIDE = 16;

    @Test
    @DisplayName("A31: the six shapes differ in at least a tenth of a 16-point box, pair by pair")
    void theShapesAreToldApartByFormAlone() {
        for (Weight one : Weight.values()) {
            for (Weight other : Weight.values()) {
                if (one != other) {
                    assertThat(different(ink(one), ink(other))).as(one + " and " + other)
                        .isGreaterThan(SIDE * SIDE / 10);
                }
            }
        }
    }

    @Test
    void everyWeightHasAShapeInsideItsBox() {
        assertThat(SvgSymbols.read("/META-INF/resources/img/weights.svg").keySet())
            .containsAll(Stream.of(Weight.values()).map(weight -> weight.code().replace(' ', '-')).toList());
        for (Weight weight : Weight.values()) {
            Rectangle2D bounds = path(weight).getBounds2D();
            assertThat(bounds.getMinX()).isBetween(0.0, 24.0);
            assertThat(bounds.getMinY()).isBetween(0.0, 24.0);
            assertThat(bounds.getMaxX()).isBetween(24.0, 48.0);
            assertThat(bounds.getMaxY()).isBetween(24.0, 48.0);
        }
    }

    /** The drop is 32 wide and 43 high in its box of 48; its round foot is an arc. */
    @Test
    void anArcOfTheScreenIsAnArcOnPaper() {
        Rectangle2D drop = path(Weight.TEST_FIRST).getBounds2D();
        assertThat(drop.getWidth()).isBetween(31.9, 32.1);
        assertThat(drop.getHeight()).isBetween(42.9, 43.1);
    }

    private static Path2D path(Weight weight) {
        return SvgSymbols.read("/META-INF/resources/img/weights.svg").get(weight.code().replace(' ', '-'));
    }

    private static boolean[] ink(Weight weight) {
        Path2D path = path(weight);
        boolean[] ink = new boolean[SIDE * SIDE];
        for (int i = 0; i < ink.length; i++) {
            ink[i] = path.contains((i % SIDE + 0.5) * 48 / SIDE, (i / SIDE + 0.5) * 48 / SIDE);
        }
        return ink;
    }

    private static int different(boolean[] one, boolean[] other) {
        int different = 0;
        for (int i = 0; i < one.length; i++) {
            different += one[i] != other[i] ? 1 : 0;
        }
        return different;
    }
}
