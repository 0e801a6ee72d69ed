package foretress.hair;

import foretress.hair.StrandDrawing.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The edge of a band: ten hairs, filled from the middle out, each drawn where its tenth of the chance is reached and ending in
 * a short point. The two middle ones show wherever there is any chance, so that an unsure band can still be seen.
 */
final class BandOutline {
    private static final int HAIRS = 10;
    private static final double HAIR = Tile.BAND / HAIRS;
    private static final double POINT = 7;
    private static final double NOTCH = 3.5;
    private static final double LOOK_CM = 0.05;

    /** A stretch of one hair, in px along the map; square where the hair begins at the scalp or ends at the tip. */
    private record Stretch(double from, double to, boolean squareFrom, boolean squareTo) {
        double point() {
            return Math.min(POINT, (to - from) / 2);
        }
    }

    /** One end of a stretch: where its profile steps up or down. */
    private record Step(double x, boolean up, int hair, Stretch stretch) {}

    private final Lane lane;
    private final double lengthCm;
    private final double rootX;
    private final double pxACm;
    private final double middle;

    BandOutline(Lane lane, double lengthCm, double rootX, double pxACm, double middle) {
        this.lane = lane;
        this.lengthCm = lengthCm;
        this.rootX = rootX;
        this.pxACm = pxACm;
        this.middle = middle;
    }

    /** Closed outlines, mostly one; none where there is no chance at all. */
    List<List<Point>> outlines() {
        List<List<Point>> outlines = new ArrayList<>();
        for (Stretch core : core()) {
            List<Point> edge = new ArrayList<>(half(core, -1));
            List<Point> lower = half(core, 1);
            Collections.reverse(lower);
            edge.addAll(lower);
            outlines.add(List.copyOf(edge));
        }
        return outlines;
    }

    private List<Stretch> core() {
        double near = lane.nearCm();
        double far = Math.min(lane.farCm(), lengthCm);
        boolean any = lane.safetyChance() > 0 || lane.chanceLeft() > 0;
        return any && near < far ? List.of(stretch(near, far)) : List.of();
    }

    private Stretch stretch(double fromCm, double toCm) {
        return new Stretch(x(fromCm), x(toCm), fromCm <= 0, toCm >= lengthCm - 1e-9);
    }

    private double x(double cm) {
        return rootX + cm * pxACm;
    }

    /** Upper half (side -1: hairs 1, 3, 5, ...) or lower half (side 1: hairs 2, 4, 6, ...), from the scalp's side outwards. */
    private List<Point> half(Stretch core, int side) {
        List<Step> steps = steps(core, side);
        List<Point> points = new ArrayList<>();
        int height = 0;
        for (Step step : steps) {
            points.addAll(step.up ? up(step, height, side) : down(step, height - 1, side));
            height += step.up ? 1 : -1;
        }
        return points;
    }

    private List<Step> steps(Stretch core, int side) {
        List<Step> steps = new ArrayList<>();
        for (int hair = 0; hair < HAIRS / 2; hair++) {
            int tenth = 2 * hair + (side < 0 ? 1 : 2);
            for (Stretch s : hair == 0 ? List.of(core) : stretches(core, (tenth - 0.5) / HAIRS)) {
                steps.add(new Step(s.from, true, hair, s));
                steps.add(new Step(s.to, false, hair, s));
            }
        }
        steps.sort(Comparator.comparingDouble(Step::x).thenComparing(s -> !s.up)
            .thenComparingInt(s -> s.up ? s.hair : -s.hair));
        return steps;
    }

    /** Where the chance is at least this, inside the core. */
    private List<Stretch> stretches(Stretch core, double chance) {
        List<Stretch> found = new ArrayList<>();
        double from = -1;
        for (int i = 0;; i++) {
            double cm = Math.min(i * LOOK_CM, lengthCm);
            boolean here = lane.chanceAt(cm) >= chance - 1e-9;
            boolean last = cm >= lengthCm;
            if (here && from < 0) {
                from = cm;
            }
            if (from >= 0 && (!here || last)) {
                found.add(inside(core, stretch(from, here ? cm : cm - LOOK_CM)));
                from = -1;
            }
            if (last) {
                return found.stream().filter(s -> s.to > s.from).toList();
            }
        }
    }

    private static Stretch inside(Stretch core, Stretch s) {
        return new Stretch(Math.max(core.from, s.from), Math.min(core.to, s.to), s.squareFrom, s.squareTo);
    }

    private List<Point> up(Step step, int below, int side) {
        double inner = middle + side * below * HAIR;
        double outer = inner + side * HAIR;
        if (step.stretch.squareFrom) {
            return List.of(new Point(step.x, inner), new Point(step.x, outer));
        }
        double point = step.stretch.point();
        double tip = below == 0 ? inner : (inner + outer) / 2;
        double notch = below == 0 ? 0 : Math.min(NOTCH, point / 2);
        return List.of(new Point(step.x + notch, inner), new Point(step.x, tip), new Point(step.x + point, outer));
    }

    private List<Point> down(Step step, int below, int side) {
        double inner = middle + side * below * HAIR;
        double outer = inner + side * HAIR;
        if (step.stretch.squareTo) {
            return List.of(new Point(step.x, outer), new Point(step.x, inner));
        }
        double point = step.stretch.point();
        double tip = below == 0 ? inner : (inner + outer) / 2;
        double notch = below == 0 ? 0 : Math.min(NOTCH, point / 2);
        return List.of(new Point(step.x - point, outer), new Point(step.x, tip), new Point(step.x - notch, inner));
    }
}
