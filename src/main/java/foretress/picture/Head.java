package foretress.picture;

import java.util.Optional;

/**
 * What a picture says of itself before anything is decoded.
 *
 * @param width in pixels, as stored, before turning
 * @param scans times a JPEG goes over its whole area; 1 for PNG
 * @param orientation as Exif tag 0x0112 has it, 1 to 8; 1 where nothing is said
 */
record Head(int width, int height, int scans, int orientation) {
    /** A camera writes up to about a dozen; each further one costs as much again as the whole picture. */
    private static final int MOST_SCANS = 40;
    private static final long MOST_PIXELS = 40_000_000;
    private static final int LONGEST_SIDE = 20_000;

    boolean drawable() {
        return (long) width * height <= MOST_PIXELS && Math.max(width, height) <= LONGEST_SIDE;
    }

    boolean sound() {
        return width > 0 && height > 0 && scans <= MOST_SCANS;
    }

    /** @return empty when it is neither, or broken off before it has said its size */
    static Optional<Head> of(byte[] sent) {
        return switch (Kind.of(sent)) {
            case JPEG -> JpegHead.of(sent);
            case PNG -> PngHead.of(sent);
            default -> Optional.empty();
        };
    }
}
