package foretress.consent;

import com.lowagie.text.pdf.PdfContentByte;
import foretress.consent.PaperFlow.Cell;

/** What every page carries: the double rule, two punch marks, the hair over the foot. */
final class PageFrame {
    private static final float MILLIMETRE = 72 / 25.4f;
    private static final int LONGEST = 60;

    private PageFrame() {}

    static void mastheadRule(PaperFlow page) {
        page.rule(0, page.width, 2, 0);
        page.down(3.2f);
        page.rule(0, page.width, 0.75f, 0);
    }

    /** Two circles 80 mm apart (ISO 838), where the punch of a folder bites. */
    static void punchMarks(PaperFlow page) {
        PdfContentByte ink = page.ink;
        float x = page.left(-50.5f, 0);
        ink.saveState();
        ink.setGrayStroke(0.6f);
        ink.setLineWidth(0.75f);
        ink.setLineDash(2, 1.6f, 0);
        for (int side : new int[] { -1, 1 }) {
            ink.circle(x, page.size.height / 2 + side * 40 * MILLIMETRE, 3 * MILLIMETRE - 1.7f);
            ink.stroke();
        }
        ink.restoreState();
    }

    static void foot(PaperFlow page, String what, String number) {
        boolean leftward = page.direction == Direction.RIGHT_TO_LEFT;
        Hairline.drawWithBulb(page.ink, page.left(0, 0), 56, leftward ? -page.width : page.width);
        page.at(47, Cell.of(0, page.width * 0.8f, FontFace.TEXT, 10, 12, what));
        page.at(47, Cell.of(page.width * 0.8f, page.width * 0.2f, FontFace.TEXT, 10, 12, number).toEnd());
    }

    /** A name as it fits into one line of the frame; the whole name stands under the title. */
    static String shortened(String name) {
        return name.codePointCount(0, name.length()) <= LONGEST ? name
            : name.substring(0, name.offsetByCodePoints(0, LONGEST)).strip() + "…";
    }
}
