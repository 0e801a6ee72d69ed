package foretress.consent;

import com.lowagie.text.pdf.PdfContentByte;

/** The single hair that rules the paper: thick at the root, thinner to the tip, never quite straight. */
final class Hairline {
    private static final float ROOT = 2.6f;
    private static final float TIP = 0.7f;
    private static final float SWAY = 0.9f;
    private static final float BULB = 14;
    private static final int STEPS = 24;

    private Hairline() {}

    /** From the root at x, y to its tip {@code length} points away; a negative length runs to the left. */
    static void draw(PdfContentByte ink, float x, float y, float length) {
        ink.saveState();
        ink.setGrayFill(0);
        ink.moveTo(x, y + ROOT / 2);
        for (int i = 1; i <= STEPS; i++) {
            edge(ink, x, y, length, i, 1);
        }
        for (int i = STEPS; i >= 0; i--) {
            edge(ink, x, y, length, i, -1);
        }
        ink.fill();
        ink.restoreState();
    }

    static void drawWithBulb(PdfContentByte ink, float x, float y, float length) {
        draw(ink, x, y, length);
        float along = Math.signum(length) * BULB;
        ink.saveState();
        ink.setGrayFill(0);
        ink.moveTo(x, y);
        ink.curveTo(x + along * 0.15f, y + 3.2f, x + along * 0.6f, y + 2.8f, x + along, y + 1);
        ink.lineTo(x + along, y - 1);
        ink.curveTo(x + along * 0.6f, y - 2.8f, x + along * 0.15f, y - 3.2f, x, y);
        ink.fill();
        ink.restoreState();
    }

    private static void edge(PdfContentByte ink, float x, float y, float length, int step, int side) {
        float part = (float) step / STEPS;
        float half = (ROOT + (TIP - ROOT) * part) / 2;
        float sway = SWAY * (float) Math.sin(part * Math.PI * 1.6) * (1 - part * 0.3f);
        ink.lineTo(x + length * part, y + sway + side * half);
    }
}
