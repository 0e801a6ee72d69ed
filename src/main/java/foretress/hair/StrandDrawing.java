package foretress.hair;

import java.util.List;

/**
 * The map as shapes, from which both the screen's SVG and the paper's vectors are made. Lengths are in px of 1/96 inch (times
 * 0.75 for points), x to the right, y down, origin in the top left corner; shapes lie over those before them.
 */
public record StrandDrawing(double width, double height, boolean rightToLeft, List<Shape> shapes) {
    public StrandDrawing {
        shapes = List.copyOf(shapes);
    }

    /** What a shape is drawn with; screen and paper choose the colours. */
    public enum Ink {
        TEXT, QUIET, HAIRLINE, FAINT, CUT
    }

    /** Where a text hangs on its point, in reading direction: in right-to-left writing START is its right end. */
    public enum Anchor {
        START, MIDDLE, END
    }

    public record Point(double x, double y) {}

    public sealed interface Shape permits Line, Area, Band, Text {}

    /** A line through its points. */
    public record Line(List<Point> points, double width, Ink ink, boolean dashed) implements Shape {}

    /** A closed, filled area. */
    public record Area(List<Point> points, Ink ink) implements Shape {}

    /**
     * A residue band: a closed outline filled with the {@link Tile} of its residue's pattern, tinted below it. Tiles start at
     * {@code origin}, which lies on the band's middle line. The outline is drawn {@value Band#OUTLINE} wide in the residue's ink.
     */
    public record Band(List<Point> points, Point origin, Residue residue) implements Shape {
        public static final double OUTLINE = 1.1;
        public static final double LIGHTENED_OUTLINE = 1.25;
    }

    /** One line of text, its base line through the point. */
    public record Text(Point at, String text, double size, boolean bold, Anchor anchor, Ink ink) implements Shape {}

    public static StrandDrawing of(StrandMap map, StrandWords words, StrandLayout layout) {
        return new StrandPen(map, words, layout).draw();
    }

    StrandDrawing mirrored() {
        return new StrandDrawing(width, height, true, shapes.stream().map(this::mirror).toList());
    }

    private Shape mirror(Shape shape) {
        if (shape instanceof Line line) {
            return new Line(mirror(line.points), line.width, line.ink, line.dashed);
        }
        if (shape instanceof Area area) {
            return new Area(mirror(area.points), area.ink);
        }
        if (shape instanceof Band band) {
            return new Band(mirror(band.points), mirror(band.origin), band.residue);
        }
        Text text = (Text) shape;
        return new Text(mirror(text.at), text.text, text.size, text.bold, text.anchor, text.ink);
    }

    private List<Point> mirror(List<Point> points) {
        return points.stream().map(this::mirror).toList();
    }

    private Point mirror(Point p) {
        return new Point(width - p.x, p.y);
    }
}
