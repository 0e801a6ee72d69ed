package foretress.consent;

import com.lowagie.text.pdf.PdfContentByte;
import foretress.consent.PaperFlow.Cell;
import java.util.List;

/** The client's mark as lines or letters, above the hair it is written on. */
final class MarkDrawing {
    private static final float HIGHEST = 72;
    private static final float PEN = 1.3f;

    private MarkDrawing() {}

    /** Draws the mark and leaves the cursor where its base line goes. */
    static void draw(PaperFlow sheet, SignatureMark mark, float width) {
        if (mark instanceof SignatureMark.Drawn drawn) {
            strokes(sheet, drawn, width);
        } else if (mark instanceof SignatureMark.Typed typed) {
            letters(sheet, typed.name(), width);
        }
    }

    private static void letters(PaperFlow sheet, String name, float width) {
        float wanted = FontFace.LABEL.width(name, 1);
        float size = Math.max(11, Math.min(26, (width - 12) / wanted));
        sheet.down(size < 20 ? 10 : 4);
        sheet.row(Cell.of(6, width - 6, FontFace.LABEL, size, size * 1.25f, name));
        sheet.down(1);
    }

    private static void strokes(PaperFlow sheet, SignatureMark.Drawn drawn, float width) {
        float height = Math.min(HIGHEST, (float) (width / drawn.aspect()));
        float shown = (float) (height * drawn.aspect());
        PdfContentByte ink = sheet.ink;
        ink.saveState();
        ink.setGrayStroke(0);
        ink.setGrayFill(0);
        ink.setLineWidth(PEN);
        ink.setLineCap(PdfContentByte.LINE_CAP_ROUND);
        ink.setLineJoin(PdfContentByte.LINE_JOIN_ROUND);
        float x = sheet.left(0, shown);
        float y = sheet.cursor();
        drawn.strokes().forEach(stroke -> stroke(ink,
            stroke.points().stream()
                .map(point -> new float[] { x + (float) point.x() * shown, y - (float) point.y() * height }).toList()));
        ink.restoreState();
        sheet.down(height + 2);
    }

    /** A smooth line: it bends at the points and runs straight through the middles between them. */
    private static void stroke(PdfContentByte ink, List<float[]> points) {
        if (points.isEmpty()) {
            return;
        }
        float[] from = points.get(0);
        if (points.size() == 1) {
            ink.circle(from[0], from[1], PEN * 0.7f);
            ink.fill();
            return;
        }
        ink.moveTo(from[0], from[1]);
        for (int i = 1; i < points.size() - 1; i++) {
            float[] bend = points.get(i);
            float[] next = points.get(i + 1);
            float[] to = new float[] { (bend[0] + next[0]) / 2, (bend[1] + next[1]) / 2 };
            ink.curveTo(third(from[0], bend[0]), third(from[1], bend[1]), third(to[0], bend[0]), third(to[1], bend[1]),
                to[0], to[1]);
            from = to;
        }
        float[] last = points.get(points.size() - 1);
        ink.lineTo(last[0], last[1]);
        ink.stroke();
    }

    /** A quadratic bend written as a cubic one: two thirds of the way from an end to the bend. */
    private static float third(float end, float bend) {
        return end + (bend - end) * 2 / 3;
    }
}
