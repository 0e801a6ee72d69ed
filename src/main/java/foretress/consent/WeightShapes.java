package foretress.consent;

import com.lowagie.text.pdf.PdfContentByte;
import foretress.assessment.Weight;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.Map;

/** The six shapes of the screen in solid black: told apart by form alone, also after a photocopy. */
final class WeightShapes {
    private static final float BOX = 48;
    private static final Map<String, Path2D> SYMBOLS = SvgSymbols.read("/META-INF/resources/img/weights.svg");

    private WeightShapes() {}

    /**
     * Draws the shape with the top left corner of its box at x, y, a side of the box being {@code side} points.
     *
     * @param mirrored for right-to-left paper, where the page's corner turns to the other side
     */
    static void draw(PdfContentByte ink, Weight weight, float x, float y, float side, boolean mirrored) {
        boolean flip = mirrored && weight == Weight.NOTE;
        ink.saveState();
        ink.concatCTM((flip ? -side : side) / BOX, 0, 0, -side / BOX, flip ? x + side : x, y); // y runs down on the screen
        ink.setGrayFill(0);
        Path2D path = SYMBOLS.get(weight.code().replace(' ', '-'));
        trace(ink, path);
        if (path.getWindingRule() == PathIterator.WIND_EVEN_ODD) {
            ink.eoFill();
        } else {
            ink.fill();
        }
        ink.restoreState();
    }

    private static void trace(PdfContentByte ink, Path2D path) {
        float[] p = new float[6];
        for (PathIterator at = path.getPathIterator(null); !at.isDone(); at.next()) {
            switch (at.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> ink.moveTo(p[0], p[1]);
                case PathIterator.SEG_LINETO -> ink.lineTo(p[0], p[1]);
                case PathIterator.SEG_QUADTO ->
                    throw new IllegalStateException("no symbol is made of quadratic curves");
                case PathIterator.SEG_CUBICTO -> ink.curveTo(p[0], p[1], p[2], p[3], p[4], p[5]);
                default -> ink.closePath();
            }
        }
    }
}
