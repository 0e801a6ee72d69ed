package foretress.picture;

import java.util.Optional;

/** Reads the marker segments of a JPEG (ITU-T T.81, annex B) without decoding any of it. */
final class JpegHead {
    private static final int START_OF_SCAN = 0xDA;
    private static final int END = 0xD9;
    private static final int APP1 = 0xE1;

    private final Bytes bytes;
    private int width;
    private int height;
    private int scans;
    private int orientation = 1;

    private JpegHead(byte[] sent) {
        this.bytes = new Bytes(sent);
    }

    static Optional<Head> of(byte[] sent) {
        var head = new JpegHead(sent);
        head.read();
        return head.width == 0 ? Optional.empty()
            : Optional.of(new Head(head.width, head.height, head.scans, head.orientation));
    }

    private void read() {
        int at = next(2);
        while (at + 4 <= bytes.of().length && bytes.one(at + 1) != END) {
            int marker = bytes.one(at + 1);
            int length = bytes.two(at + 2);
            note(marker, at + 4);
            at = next(at + 2 + Math.max(2, length));
        }
    }

    private void note(int marker, int at) {
        if (startsFrame(marker) && width == 0) {
            height = bytes.two(at + 1);
            width = bytes.two(at + 3);
        }
        if (marker == START_OF_SCAN) {
            scans++;
        }
        if (marker == APP1 && bytes.says(at, "Exif\0\0")) {
            orientation = Exif.orientation(bytes, at + 6);
        }
    }

    /** SOF0 to SOF15 without the three that are something else. */
    private static boolean startsFrame(int marker) {
        return marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    }

    /** The next marker at or after this place, past coded data, stuffed zeros, restarts and fill bytes. */
    private int next(int from) {
        int at = from;
        while (at + 1 < bytes.of().length && !(bytes.one(at) == 0xFF && isMarker(bytes.one(at + 1)))) {
            at++;
        }
        return at;
    }

    private static boolean isMarker(int second) {
        return second != 0 && second != 0xFF && second != 1 && !(second >= 0xD0 && second <= 0xD7);
    }
}
