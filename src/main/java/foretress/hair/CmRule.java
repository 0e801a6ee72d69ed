package foretress.hair;

import foretress.hair.StrandDrawing.Anchor;
import foretress.hair.StrandDrawing.Ink;
import foretress.hair.StrandDrawing.Line;
import foretress.hair.StrandDrawing.Point;
import foretress.hair.StrandDrawing.Shape;
import foretress.hair.StrandDrawing.Text;
import java.util.ArrayList;
import java.util.List;

/** The centimetre rule under the lanes: a tick each centimetre, a number each 1, 5 or 10. */
record CmRule(double lengthCm, double rootX, double pxACm, boolean roomBeyond) {
    static final double HEIGHT = 34;
    private static final double TEXT = 14;
    private static final double CLOSEST_TICKS = 3;

    int numberedEvery() {
        return lengthCm <= 15 ? 1 : lengthCm <= 60 ? 5 : 10;
    }

    List<Integer> numbered() {
        List<Integer> at = new ArrayList<>();
        for (int cm = 0; cm <= lengthCm; cm += numberedEvery()) {
            at.add(cm);
        }
        return at;
    }

    double x(double cm) {
        return rootX + cm * pxACm;
    }

    List<Shape> shapes(double y, StrandWords words) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(line(rootX - 0.7, y, x(lengthCm) + 0.7, y, 1.6));
        for (int cm = 0; cm <= lengthCm; cm++) {
            boolean numbered = cm % numberedEvery() == 0;
            if (numbered || cm % 5 == 0 || pxACm >= CLOSEST_TICKS) {
                shapes.add(line(x(cm), y, x(cm), y + (numbered ? 8.5 : cm % 5 == 0 ? 6.5 : 4.5), numbered ? 1.4 : 1));
            }
        }
        shapes.addAll(numbers(y + 24, words));
        return shapes;
    }

    private List<Shape> numbers(double y, StrandWords words) {
        List<Shape> shapes = new ArrayList<>();
        boolean whole = lengthCm % numberedEvery() == 0;
        String end = words.centimetres(lengthCm);
        double endFrom = x(lengthCm) - TextWidth.of(end, TEXT, false) - 4;
        for (int cm : numbered()) {
            double half = TextWidth.of(words.number(cm), TEXT, false) / 2;
            if (roomBeyond || x(cm) + half < endFrom) {
                shapes.add(new Text(new Point(x(cm), y), words.number(cm), TEXT, false, Anchor.MIDDLE, Ink.TEXT));
            }
        }
        String beyond = whole ? words.say("strand-cm") : end;
        double gap = whole ? 8 + TextWidth.of(words.number(lengthCm), TEXT, false) / 2 : 12;
        shapes.add(roomBeyond
            ? new Text(new Point(x(lengthCm) + gap, y), beyond, TEXT, false, Anchor.START, Ink.QUIET)
            : new Text(new Point(x(lengthCm) + 1, y), end, TEXT, false, Anchor.END, Ink.QUIET));
        return shapes;
    }

    private static Line line(double x1, double y1, double x2, double y2, double width) {
        return new Line(List.of(new Point(x1, y1), new Point(x2, y2)), width, Ink.TEXT, false);
    }
}
