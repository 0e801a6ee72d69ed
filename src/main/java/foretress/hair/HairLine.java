package foretress.hair;

import foretress.hair.StrandDrawing.Area;
import foretress.hair.StrandDrawing.Ink;
import foretress.hair.StrandDrawing.Line;
import foretress.hair.StrandDrawing.Point;
import foretress.hair.StrandDrawing.Shape;
import java.util.ArrayList;
import java.util.List;

/** The single hair above the lanes: bulb, scalp, and a strand that sways a little and thins towards its tip. */
final class HairLine {
    private static final double THICK = 3.6;
    private static final double THIN = 0.7;
    private static final double BULB_BACK = 14;
    private static final double BULB_FRONT = 4;
    private static final double DOT_GAP = 9;
    private static final int STEPS = 60;
    private static final double SWAYS_FULLY_FROM = 160;

    private final double rootX;
    private final double tipX;
    private final double y;

    HairLine(double rootX, double tipX, double y) {
        this.rootX = rootX;
        this.tipX = tipX;
        this.y = y;
    }

    /** A length nobody knows is a strand that goes on in dots. */
    List<Shape> shapes(boolean lengthKnown) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Area(strand(lengthKnown ? 1 : 0.55), Ink.TEXT));
        if (!lengthKnown) {
            shapes.addAll(dots(0.58));
        }
        shapes.add(new Area(bulb(), Ink.TEXT));
        shapes.add(new Line(scalp(), 2, Ink.TEXT, false));
        return shapes;
    }

    private List<Point> strand(double part) {
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double along = part * i / STEPS;
            double half = thickness(along) / 2;
            upper.add(new Point(x(along), y + sway(along) - half));
            lower.add(0, new Point(x(along), y + sway(along) + half));
        }
        upper.addAll(lower);
        return upper;
    }

    private double x(double along) {
        return rootX + along * (tipX - rootX);
    }

    private static double thickness(double along) {
        return THICK - (THICK - THIN) * Math.pow(along, 1.7);
    }

    /** Straight out of the scalp, one low hump past the middle, a small flick at the tip. */
    private double sway(double along) {
        double calm = Math.min(1, (tipX - rootX) / SWAYS_FULLY_FROM);
        double hump = 2.6 * Math.exp(-Math.pow((along - 0.58) / 0.13, 2));
        double flick = 3.4 * Math.pow(Math.max(0, (along - 0.72) / 0.28), 1.6);
        return calm * (0.7 * Math.sin(along * Math.PI) - hump + flick);
    }

    private List<Shape> dots(double from) {
        List<Shape> dots = new ArrayList<>();
        for (double x = x(from); x <= tipX; x += DOT_GAP) {
            double along = (x - rootX) / (tipX - rootX);
            dots.add(new Area(circle(x, y + sway(along), 1.3), Ink.TEXT));
        }
        return dots;
    }

    private static List<Point> circle(double x, double y, double radius) {
        List<Point> edge = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            edge.add(new Point(x + radius * Math.cos(i * Math.PI / 5), y + radius * Math.sin(i * Math.PI / 5)));
        }
        return edge;
    }

    private List<Point> bulb() {
        double[][] profile =
            { { -BULB_BACK, 2 }, { -BULB_BACK + 2.5, 2.9 }, { -BULB_BACK + 6, 3.8 }, { -BULB_BACK + 9, 3.7 },
                { -BULB_BACK + 12, 2.8 }, { -0.5, 2 }, { BULB_FRONT, THICK / 2 } };
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (double[] at : profile) {
            upper.add(new Point(rootX + at[0], y - at[1]));
            lower.add(0, new Point(rootX + at[0], y + at[1]));
        }
        upper.addAll(lower);
        return upper;
    }

    private List<Point> scalp() {
        List<Point> arc = new ArrayList<>();
        for (int i = -10; i <= 10; i++) {
            double part = i / 10.0;
            arc.add(new Point(rootX + 2.2 - 4.4 * part * part, y + 20 * part));
        }
        return arc;
    }
}
