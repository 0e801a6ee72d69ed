package foretress.picture;

import java.util.Optional;

/** Reads the chunks of a PNG (ISO/IEC 15948) up to its pixels. */
final class PngHead {
    private static final int SIGNATURE = 8;
    private static final int BESIDES_DATA = 12;

    private PngHead() {}

    static Optional<Head> of(byte[] sent) {
        var bytes = new Bytes(sent);
        boolean begun = bytes.says(SIGNATURE + 4, "IHDR");
        return begun
            ? Optional.of(new Head(bytes.four(SIGNATURE + 8), bytes.four(SIGNATURE + 12), 1, orientation(bytes)))
            : Optional.empty();
    }

    private static int orientation(Bytes bytes) {
        int at = SIGNATURE;
        while (at + BESIDES_DATA <= bytes.of().length && !bytes.says(at + 4, "IDAT")) {
            int length = bytes.four(at);
            if (bytes.says(at + 4, "eXIf")) {
                return Exif.orientation(bytes, at + 8);
            }
            if (length < 0 || length > bytes.of().length) {
                return 1;
            }
            at += BESIDES_DATA + length;
        }
        return 1;
    }
}
