package foretress.hair;

import foretress.hair.StrandDrawing.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * One repeat of a residue's pattern, in px; marks may reach over its edges and then belong to both neighbours. Its middle
 * height lies on the band's middle line, so waves keep to the edges and question marks to the middle.
 *
 * @param filled the pattern is nothing but the residue's ink
 * @param tinted a light tint of the ink lies under the marks; without it the ground is that of a choice slip
 */
public record Tile(double width, double height, boolean filled, boolean tinted, boolean dashedOutline,
    List<Mark> marks) {
    /** Thickness of a whole band: ten hairs. */
    public static final double BAND = 24;

    /** A line in the residue's ink, or, with width 0, a filled area. */
    public record Mark(List<Point> points, double width) {}

    private static final Tile HATCH = hatch();
    private static final Tile LEAVES = leaves();
    private static final Tile STRIPES = stripes();
    private static final Tile WAVE = wave();
    private static final Tile QUESTIONS = questions();
    private static final Tile SOLID = new Tile(BAND, BAND, true, false, false, List.of());
    private static final Tile OPEN = new Tile(BAND, BAND, false, false, false, List.of());

    public static Tile of(Residue.Pattern pattern) {
        return switch (pattern) {
            case HATCH -> HATCH;
            case LEAVES -> LEAVES;
            case SOLID -> SOLID;
            case OPEN -> OPEN;
            case STRIPES -> STRIPES;
            case WAVE -> WAVE;
            case QUESTIONS -> QUESTIONS;
        };
    }

    /** Lines at 45°, 7 px apart, so every 7 × √2 px along the band. */
    private static Tile hatch() {
        double side = 7 * Math.sqrt(2);
        return new Tile(side, side, false, true, false, List.of(
            line(1.75, -side, -side, 2 * side, 2 * side), line(1.75, -side, 2 * side, 2 * side, -side)));
    }

    /** Two leaves, 6 px long, in a repeat of 13 × 11 px. */
    private static Tile leaves() {
        return new Tile(13, 11, false, true, false, List.of(leaf(3.2, 2.8), leaf(9.7, 8.3)));
    }

    private static Mark leaf(double x, double y) {
        List<Point> edge = new ArrayList<>();
        int steps = 8;
        for (int i = 0; i < 2 * steps; i++) {
            double along = i < steps ? -1 + 2.0 * i / steps : 1 - 2.0 * (i - steps) / steps;
            double across =
                (i < steps ? 1 : -1) * 1.5 * (1 - along * along) * (1 + 0.35 * along * (i < steps ? 1 : -1));
            double tilt = -0.45;
            edge.add(new Point(x + 3 * along * Math.cos(tilt) - across * Math.sin(tilt),
                y + 3 * along * Math.sin(tilt) + across * Math.cos(tilt)));
        }
        return new Mark(List.copyOf(edge), 0);
    }

    private static Tile stripes() {
        return new Tile(18, BAND, false, true, false, List.of(line(2.6, 3, -1, 3, BAND + 1),
            line(1.5, 9.4, -1, 9.4, BAND + 1), line(0.7, 14.6, -1, 14.6, BAND + 1)));
    }

    private static Tile wave() {
        return new Tile(26, BAND, false, true, false, List.of(wave(4.6), wave(BAND - 4.6)));
    }

    private static Mark wave(double y) {
        List<Point> line = new ArrayList<>();
        for (int x = -2; x <= 28; x++) {
            line.add(new Point(x, y - 2 * Math.sin(x * 2 * Math.PI / 26)));
        }
        return new Mark(List.copyOf(line), 2.4);
    }

    private static Tile questions() {
        double middle = BAND / 2;
        List<Point> hook =
            List.of(new Point(5.1, middle - 2.9), new Point(5.6, middle - 4.6), new Point(7, middle - 5.4),
                new Point(8.7, middle - 4.9), new Point(9.3, middle - 3.5), new Point(8.8, middle - 2.1),
                new Point(7.3, middle - 0.9), new Point(7, middle + 0.3), new Point(7, middle + 1.2));
        return new Tile(24, BAND, false, true, true,
            List.of(new Mark(hook, 1.9), dot(7, middle + 4, 1.25), dot(19, middle, 1.45)));
    }

    private static Mark dot(double x, double y, double radius) {
        List<Point> edge = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            edge.add(new Point(x + radius * Math.cos(i * Math.PI / 6), y + radius * Math.sin(i * Math.PI / 6)));
        }
        return new Mark(List.copyOf(edge), 0);
    }

    private static Mark line(double width, double x1, double y1, double x2, double y2) {
        return new Mark(List.of(new Point(x1, y1), new Point(x2, y2)), width);
    }
}
