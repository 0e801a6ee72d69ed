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
    private static final int MOST_LINES = 4;
    /** More lanes than this on paper get a line of words each: the page has an end, and the list below says all of it. */
    private static final int FULL_PAPER_LANES = 12;
    private static final double LINE = 17.5;
    private static final double STACKED_LINE = 19;
    private static final double STACKED_MIDDLE = 66;

    private final StrandMap map;
    private final StrandWords words;
    private final StrandLayout layout;
    private final CmRule rule;
    private final double laneHeight;
    private final double top;
    private final List<Placed> placed = new ArrayList<>();
    private final List<Shape> shapes = new ArrayList<>();

    /** A lane with its words broken into lines, and where it begins. */
    private record Placed(Lane lane, List<String> said, List<String> end, double y, double height, double middle) {}

    StrandPen(StrandMap map, StrandWords words, StrandLayout layout) {
        this.map = map;
        this.words = words;
        this.layout = layout;
        double scale = Math.max(SHORTEST_SCALE_CM, map.lengthCm());
        this.rule = new CmRule(map.lengthCm(), layout.rootX(), (layout.endX() - layout.rootX()) / scale,
            !layout.stacked() || map.lengthCm() < SHORTEST_SCALE_CM - 2);
        this.laneHeight =
            map.lanes().isEmpty() ? 34 : layout.stacked() ? 84 : map.lanes().size() <= ROOMY_LANES ? 42 : 38;
        this.top = TOP + (layout.stacked() && !map.lengthKnown() ? 20 : 0);
        map.lanes().forEach(lane -> placed.add(placed(lane, bottom())));
    }

    private double bottom() {
        return placed.isEmpty() ? top : placed.get(placed.size() - 1).y + placed.get(placed.size() - 1).height;
    }

    private Placed placed(Lane lane, double y) {
        String said = lane.treatment().said();
        String end = words.end(map, lane);
        return layout.stacked() ? stacked(lane, said, end, y) : beside(lane, said, end, y);
    }

    private Placed beside(Lane lane, String said, String end, double y) {
        double room = layout.labelWidth() - 26;
        double endRoom = layout.width() - chanceX();
        int most = layout.equals(StrandLayout.PAPER) && map.lanes().size() > FULL_PAPER_LANES ? 1 : MOST_LINES;
        List<String> first = TextWidth.wrapped(said, room, room, most, SMALL);
        List<String> second = new ArrayList<>(TextWidth.wrapped(end, endRoom, endRoom, most, SMALL));
        second.addAll(TextWidth.wrapped(words.measured(map, lane), endRoom, endRoom, most - second.size(), SMALL));
        double height = laneHeight + Math.max(0, Math.max(first.size(), second.size()) - 1) * LINE;
        return new Placed(lane, first, second, y, height, y + height / 2);
    }

    private Placed stacked(Lane lane, String said, String end, double y) {
        double room = layout.width() - TextWidth.of(end, SMALL, false) - 12;
        List<String> first = TextWidth.wrapped(said, room, layout.width(), MOST_LINES, SMALL);
        double more = Math.max(0, first.size() - 1) * STACKED_LINE;
        return new Placed(lane, first, List.of(end), y, laneHeight + more, y + STACKED_MIDDLE + more);
    }

    StrandDrawing draw() {
        double bottom = placed.isEmpty() ? top + laneHeight : bottom();
        grid(bottom);
        hairline(top);
        lanes();
        shapes.addAll(rule.shapes(bottom + BELOW_LANES, words));
        shapes.addAll(new HairLine(layout.rootX(), rule.x(map.lengthCm()), HAIR_Y).shapes(map.lengthKnown()));
        cutLine(bottom + BELOW_LANES - 2);
        margins();
        var drawing = new StrandDrawing(layout.width(), bottom + BELOW_LANES + CmRule.HEIGHT, false, shapes);
        return words.rightToLeft() ? drawing.mirrored() : drawing;
    }

    private void grid(double bottom) {
        if (!layout.stacked()) {
            rule.numbered().forEach(cm -> line(Ink.FAINT, 1, rule.x(cm), top - 16, rule.x(cm), bottom + BELOW_LANES));
        }
    }

    private void lanes() {
        if (map.lanes().isEmpty()) {
            noTreatment();
        }
        for (Placed lane : placed) {
            lane(lane);
            hairline(lane.y + lane.height);
        }
    }

    private void noTreatment() {
        double middle = top + laneHeight / 2;
        text(0, middle + 5, words.say("strand-no-treatment"), NAME, true, Anchor.START, Ink.TEXT);
        if (!layout.stacked()) {
            axis(middle);
        }
        hairline(top + laneHeight);
    }

    private void lane(Placed at) {
        if (layout.stacked()) {
            rule.numbered().forEach(cm -> line(Ink.FAINT, 1, rule.x(cm), at.middle - 16, rule.x(cm), at.y + at.height));
            stackedWords(at);
        } else {
            besideWords(at);
        }
        axis(at.middle);
        var origin = new Point(layout.rootX(), at.middle);
        new BandOutline(at.lane, map.lengthCm(), layout.rootX(), rule.pxACm(), at.middle).outlines()
            .forEach(edge -> shapes.add(new Band(edge, origin, at.lane.treatment().residue())));
    }

    private void axis(double y) {
        line(Ink.HAIRLINE, 1.2, layout.rootX(), y, rule.x(map.lengthCm()), y);
    }

    private void besideWords(Placed at) {
        block(0, at.middle, layout.labelWidth() - 26, at.lane.treatment().label(), at.said);
        double x = chanceX();
        block(x, at.middle, layout.width() - x, words.chance(map, at.lane), at.end);
    }

    /** A bold line and what belongs to it, about the middle. */
    private void block(double x, double middle, double room, String first, List<String> lines) {
        double y = middle + 5 - lines.size() * LINE / 2;
        text(x, y, TextWidth.fitted(first, room, NAME, true), NAME, true, Anchor.START, Ink.TEXT);
        for (String line : lines) {
            y += LINE;
            text(x, y, line, SMALL, false, Anchor.START, Ink.QUIET);
        }
    }

    private void stackedWords(Placed at) {
        ends(at.y + 20, at.lane.treatment().label(), words.chance(map, at.lane), NAME, true, Ink.TEXT);
        ends(at.y + 39, at.said.isEmpty() ? "" : at.said.get(0), at.end.get(0), SMALL, false, Ink.QUIET);
        for (int i = 1; i < at.said.size(); i++) {
            text(0, at.y + 39 + i * STACKED_LINE, at.said.get(i), SMALL, false, Anchor.START, Ink.QUIET);
        }
    }

    private void ends(double y, String start, String end, double size, boolean bold, Ink ink) {
        double room = layout.width() - TextWidth.of(end, size, bold) - 12;
        text(0, y, TextWidth.fitted(start, room, size, bold), size, bold, Anchor.START, ink);
        text(layout.width(), y, end, size, bold, Anchor.END, ink);
    }

    private double chanceX() {
        return layout.endX() + 26;
    }

    /** Through all lanes, but never through words: where they stand above the bands it is drawn behind each band alone. */
    private void cutLine(double bottom) {
        map.metalFreeCutCm().ifPresent(cm -> {
            double x = rule.x(cm);
            if (layout.stacked()) {
                dashed(x, 4, HAIR_Y + 14);
                placed.forEach(at -> dashed(x, at.middle - 16, at.middle + 18));
            } else {
                dashed(x, 4, bottom);
            }
            cutWords(x, words.cut(cm));
        });
    }

    private void dashed(double x, double from, double to) {
        shapes.add(new Line(List.of(new Point(x, from), new Point(x, to)), 1.8, Ink.CUT, true));
    }

    private void cutWords(double x, String says) {
        boolean after = cutWordsAfter(x, says);
        text(after ? x + 8 : x - 8, CUT_TEXT_Y, says, NAME, true, after ? Anchor.START : Anchor.END, Ink.CUT);
    }

    /** After the line if they end before the word "ends" and the margin, or if before it they would stand on the scalp. */
    private boolean cutWordsAfter(double x, String says) {
        double width = TextWidth.of(says, NAME, true);
        double room = layout.stacked() ? layout.width() : endsX() - TextWidth.of(endsWord(), SMALL, false) - 8;
        return x + 8 + width < room || x - 8 - width < layout.rootX() + 8;
    }

    private String endsWord() {
        return map.lengthKnown() ? words.say("strand-ends") : words.length(map);
    }

    private double endsX() {
        return rule.x(map.lengthCm());
    }

    private void margins() {
        String chance = map.lanes().isEmpty() ? "" : words.say("strand-chance");
        if (layout.stacked()) {
            quiet(0, HAIR_Y + 32, words.say("strand-scalp"), Anchor.START);
            quiet(layout.width(), HAIR_Y + 32, chance.isEmpty() ? words.say("strand-ends") : chance, Anchor.END);
            quiet(0, HAIR_Y + 52, map.lengthKnown() ? "" : endsWord(), Anchor.START);
        } else {
            quiet(layout.rootX() - 20, HAIR_Y + 5, words.say("strand-scalp"), Anchor.END);
            ends();
            quiet(chanceX(), top - 9, TextWidth.fitted(chance, layout.width() - chanceX(), SMALL, false), Anchor.START);
        }
    }

    /** Above the tip; beside it where the hair is too short for that or the cut's words need the room. */
    private void ends() {
        double room = endsX() - layout.rootX() - 12;
        boolean above = TextWidth.of(endsWord(), SMALL, false) < room && map.metalFreeCutCm()
            .map(cm -> rule.x(cm) + 8 + TextWidth.of(words.cut(cm), NAME, true) < endsX()
                - TextWidth.of(endsWord(), SMALL, false)
                || !cutWordsAfter(rule.x(cm), words.cut(cm)))
            .orElse(true);
        if (above) {
            quiet(endsX(), HAIR_Y - 14, endsWord(), Anchor.END);
        } else if (endsX() + 10 + TextWidth.of(endsWord(), SMALL, false) < layout.width()) {
            quiet(endsX() + 10, HAIR_Y + 7, endsWord(), Anchor.START);
        } else {
            quiet(endsX(), HAIR_Y + 24, endsWord(), Anchor.END);
        }
    }

    private void quiet(double x, double y, String text, Anchor anchor) {
        if (!text.isEmpty()) {
            text(x, y, text, SMALL, false, anchor, Ink.QUIET);
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
