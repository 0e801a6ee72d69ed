package foretress.consent;

/** The paper a salon prints on; widths and heights in points of 1/72 inch. */
public enum PaperSize {
    A4(595.276f, 841.89f),
    LETTER(612, 792);

    final float width;
    final float height;

    PaperSize(float width, float height) {
        this.width = width;
        this.height = height;
    }
}
