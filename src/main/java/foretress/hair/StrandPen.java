package foretress.hair;

import foretress.hair.StrandDrawing.Anchor;
import foretress.hair.StrandDrawing.Band;
import foretress.hair.StrandDrawing.Ink;
import foretress.hair.StrandDrawing.Line;
import foretress.hair.StrandDrawing.Point;
import foretress.hair.StrandDrawing.Shape;
import foretress.hair.StrandDrawing.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays a map out: the hair on top, a lane a treatment, the rule at the bottom, one dashed line where to cut. */
final class StrandPen {
    /** Short hair looks short: the scale is never shorter than this. */
    private static final double SHORTEST_SCALE_CM = 12;
    private static final double HAIR_Y = 34;
    private static final double TOP = 74;
    private static final double BELOW_LANES = 9;
    private static final double CUT_TEXT_Y = 14;
    private static final double NAME = 15;
    private static final double SMALL = 14;
    private static final int ROOMY_LANES = 6;

    private final StrandMap map;
    private final StrandWords words;
    private final StrandLayout layout;
    private final CmRule rule;
    private final double laneHeight;
    private final List<Shape> shapes = new ArrayList<>();

    StrandPen(StrandMap map, StrandWords words, StrandLayout layout) {
        this.map = map;
        this.words = words;
        this.layout = layout;
        double scale = Math.max(SHORTEST_SCALE_CM, map.lengthCm());
        this.rule = new CmRule(map.lengthCm(), layout.rootX(), (layout.endX() - layout.rootX()) / scale,
            !layout.stacked() || map.lengthCm() < SHORTEST_SCALE_CM - 2);
        this.laneHeight = layout.stacked() ? 84 : map.lanes().isEmpty() ? 34 : map.lanes().size() <= ROOMY_LANES ? 42 : 38;
    }

    StrandDrawing draw() {
        double bottom = TOP + Math.max(1, map.lanes().size()) * laneHeight;
        grid(bottom);
        hairline(TOP);
        lanes();
        shapes.addAll(rule.shapes(bottom + BELOW_LANES, words));
        shapes.addAll(new HairLine(layout.rootX(), rule.x(map.lengthCm()), HAIR_Y).shapes(map.lengthKnown()));
        cutLine(bottom + BELOW_LANES - 2);
        margins();
        StrandDrawing drawing = new StrandDrawing(layout.width(), bottom + BELOW_LANES + CmRule.HEIGHT, false, shapes);
        return words.rightToLeft() ? drawing.mirrored() : drawing;
    }

    private void grid(double bottom) {
        if (!layout.stacked()) {
            rule.numbered().forEach(cm -> line(Ink.FAINT, 1, rule.x(cm), TOP - 16, rule.x(cm), bottom + BELOW_LANES));
        }
    }

    private void lanes() {
        if (map.lanes().isEmpty()) {
            noTreatment();
        }
        double top = TOP;
        for (Lane lane : map.lanes()) {
            lane(lane, top);
            top += laneHeight;
            hairline(top);
        }
    }

    private void noTreatment() {
        double middle = TOP + laneHeight / 2;
        text(0, middle + 5, words.say("strand-no-treatment"), NAME, true, Anchor.START, Ink.TEXT);
        if (!layout.stacked()) {
            axis(middle);
        }
        hairline(TOP + laneHeight);
    }

    private void lane(Lane lane, double top) {
        double middle = layout.stacked() ? top + 66 : top + laneHeight / 2;
        if (layout.stacked()) {
            rule.numbered().forEach(cm -> line(Ink.FAINT, 1, rule.x(cm), middle - 16, rule.x(cm), top + laneHeight));
            stackedWords(lane, top);
        } else {
            besideWords(lane, middle);
        }
        axis(middle);
        Point origin = new Point(layout.rootX(), middle);
        new BandOutline(lane, map.lengthCm(), layout.rootX(), rule.pxACm(), middle).outlines()
            .forEach(edge -> shapes.add(new Band(edge, origin, lane.treatment().residue())));
    }

    private void axis(double y) {
        line(Ink.HAIRLINE, 1.2, layout.rootX(), y, rule.x(map.lengthCm()), y);
    }

    private void besideWords(Lane lane, double middle) {
        double room = layout.labelWidth() - 26;
        pair(0, middle, room, lane.treatment().label(), lane.treatment().said());
        double x = chanceX();
        pair(x, middle, layout.width() - x, words.chance(map, lane), words.end(map, lane));
    }

    /** Two lines about the middle, or the first alone upon it. */
    private void pair(double x, double middle, double room, String first, String second) {
        double drop = second.isEmpty() ? 5 : -3.5;
        text(x, middle + drop, TextWidth.fitted(first, room, NAME, true), NAME, true, Anchor.START, Ink.TEXT);
        if (!second.isEmpty()) {
            text(x, middle + 14, TextWidth.fitted(second, room, SMALL, false), SMALL, false, Anchor.START, Ink.QUIET);
        }
    }

    private void stackedWords(Lane lane, double top) {
        ends(top + 20, lane.treatment().label(), words.chance(map, lane), NAME, true, Ink.TEXT);
        ends(top + 39, lane.treatment().said(), words.end(map, lane), SMALL, false, Ink.QUIET);
    }

    private void ends(double y, String start, String end, double size, boolean bold, Ink ink) {
        double room = layout.width() - TextWidth.of(end, size, bold) - 12;
        text(0, y, TextWidth.fitted(start, room, size, bold), size, bold, Anchor.START, ink);
        text(layout.width(), y, end, size, bold, Anchor.END, ink);
    }

    private double chanceX() {
        return layout.endX() + 26;
    }

    private void cutLine(double bottom) {
        Optional<Integer> cut = map.metalFreeCutCm();
        if (cut.isEmpty()) {
            return;
        }
        double x = rule.x(cut.get());
        shapes.add(new Line(List.of(new Point(x, 4), new Point(x, bottom)), 1.8, Ink.CUT, true));
        String says = words.cut(cut.get());
        boolean after = x + 8 + TextWidth.of(says, NAME, true) < layout.width() - 50;
        text(after ? x + 8 : x - 8, CUT_TEXT_Y, says, NAME, true, after ? Anchor.START : Anchor.END, Ink.CUT);
    }

    private void margins() {
        boolean assumed = !map.lengthKnown();
        if (layout.stacked()) {
            text(0, HAIR_Y + 32, words.say("strand-scalp"), SMALL, false, Anchor.START, Ink.QUIET);
            text(layout.width(), HAIR_Y + 32, words.say(map.lanes().isEmpty() ? "strand-ends" : "strand-chance"), SMALL, false,
                Anchor.END, Ink.QUIET);
        } else {
            text(layout.rootX() - 20, HAIR_Y + 5, words.say("strand-scalp"), SMALL, false, Anchor.END, Ink.QUIET);
            text(rule.x(map.lengthCm()), HAIR_Y - 14, words.say("strand-ends"), SMALL, false, Anchor.END, Ink.QUIET);
            if (!map.lanes().isEmpty()) {
                text(chanceX(), TOP - 9, words.say("strand-chance"), SMALL, false, Anchor.START, Ink.QUIET);
            }
        }
        if (assumed) {
            text(layout.stacked() ? layout.width() : layout.rootX() + 20, CUT_TEXT_Y, words.length(map), SMALL, false,
                layout.stacked() ? Anchor.END : Anchor.START, Ink.QUIET);
        }
    }

    private void hairline(double y) {
        line(Ink.HAIRLINE, 1, 0, y, layout.width(), y);
    }

    private void line(Ink ink, double width, double x1, double y1, double x2, double y2) {
        shapes.add(new Line(List.of(new Point(x1, y1), new Point(x2, y2)), width, ink, false));
    }

    private void text(double x, double y, String text, double size, boolean bold, Anchor anchor, Ink ink) {
        shapes.add(new Text(new Point(x, y), text, size, bold, anchor, ink));
    }
}
