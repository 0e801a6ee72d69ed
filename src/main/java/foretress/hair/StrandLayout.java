package foretress.hair;

/**
 * How wide the map is and where its words stand, in px.
 *
 * @param stacked words above each band, which then takes the full width (a phone); otherwise words left and right of it
 * @param labelWidth the column on the reading-start side
 * @param chanceWidth the column on the other side
 */
public record StrandLayout(double width, boolean stacked, double labelWidth, double chanceWidth) {
    public static final StrandLayout WIDE = new StrandLayout(936, false, 216, 188);
    public static final StrandLayout TABLET = new StrandLayout(640, true, 0, 0);
    public static final StrandLayout PHONE = new StrandLayout(320, true, 0, 0);
    /** The width between the margins of the consent on A4, 163 mm. */
    public static final StrandLayout PAPER = new StrandLayout(760, false, 204, 194);

    private static final double BULB_ROOM = 16;
    private static final double TIP_ROOM = 2;

    /** Where the scalp is. */
    double rootX() {
        return stacked ? BULB_ROOM : labelWidth;
    }

    /** Where the drawn length, or the whole scale when the hair is short, ends. */
    double endX() {
        return width - (stacked ? TIP_ROOM : chanceWidth);
    }
}
