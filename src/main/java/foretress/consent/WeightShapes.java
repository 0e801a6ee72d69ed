package foretress.consent;

import com.lowagie.text.pdf.PdfContentByte;
import foretress.assessment.Weight;

/** The six shapes in a box of 48 units, solid black: told apart by form alone, also after a photocopy. */
final class WeightShapes {
    private static final float BOX = 48;

    private WeightShapes() {}

    /** Draws the shape with the top left corner of its box at x, y, a side of the box being {@code side} points. */
    static void draw(PdfContentByte ink, Weight weight, float x, float y, float side) {
        ink.saveState();
        ink.concatCTM(side / BOX, 0, 0, -side / BOX, x, y);   // y runs down, as in the drawings for the screen
        ink.setGrayFill(0);
        ink.setGrayStroke(0);
        ink.setLineJoin(PdfContentByte.LINE_JOIN_MITER);
        switch (weight) {
            case NOTHING_FOUND -> line(ink);
            case NOTE -> page(ink);
            case RESTRICTS -> bar(ink);
            case TEST_FIRST -> drop(ink);
            case COULD_NOT_BE_ASSESSED -> lozenge(ink);
            case PREVENTS -> square(ink);
        }
        ink.restoreState();
    }

    private static void line(PdfContentByte ink) {
        ink.rectangle(10, 21.5f, 28, 5);
        ink.fill();
    }

    private static void page(PdfContentByte ink) {
        ink.setLineWidth(3.6f);
        polygon(ink, 8.8f, 7.3f, 28.5f, 7.3f, 39.2f, 18, 39.2f, 40.7f, 8.8f, 40.7f);
        ink.closePathStroke();
        polygon(ink, 27, 7, 39.5f, 19.5f, 27, 19.5f);
        ink.fill();
    }

    private static void bar(PdfContentByte ink) {
        polygon(ink, 2, 13, 18.5f, 13, 24, 24, 29.5f, 13, 46, 13, 46, 35, 2, 35);
        ink.fill();
    }

    private static void drop(PdfContentByte ink) {
        ink.moveTo(24, 2.5f);
        ink.curveTo(25.5f, 12, 40, 19, 40, 30);
        ink.curveTo(40, 38.8f, 32.8f, 45.5f, 24, 45.5f);
        ink.curveTo(15.2f, 45.5f, 8, 38.8f, 8, 30);
        ink.curveTo(8, 19, 22.5f, 12, 24, 2.5f);
        ink.fill();
    }

    private static void lozenge(PdfContentByte ink) {
        ink.setLineWidth(4);
        polygon(ink, 7, 20, 24, 4.5f, 41, 20);
        ink.stroke();
        polygon(ink, 7, 28, 24, 43.5f, 41, 28);
        ink.stroke();
        ink.moveTo(18.4f, 19.4f);
        ink.curveTo(18.4f, 12.6f, 29.8f, 12.6f, 29.8f, 19.2f);
        ink.curveTo(29.8f, 23.4f, 24.2f, 23, 24.2f, 28.6f);
        ink.stroke();
        ink.rectangle(22, 31.2f, 4.4f, 4.4f);
        ink.fill();
    }

    private static void square(PdfContentByte ink) {
        polygon(ink, 4, 4, 37, 4, 4, 37);
        ink.fill();
        polygon(ink, 44, 11, 44, 44, 11, 44);
        ink.fill();
    }

    private static void polygon(PdfContentByte ink, float... xy) {
        ink.moveTo(xy[0], xy[1]);
        for (var i = 2; i < xy.length; i += 2) {
            ink.lineTo(xy[i], xy[i + 1]);
        }
    }
}
