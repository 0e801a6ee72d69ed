package foretress.picture;

/** The one thing read from Exif: which way up (CIPA DC-008, tag 0x0112 of the first directory; TIFF 6.0 for the frame). */
final class Exif {
    private static final int ORIENTATION = 0x0112;
    private static final int ENTRY = 12;

    private Exif() {}

    /**
     * @param start of the TIFF header
     * @return 1 to 8; 1 where nothing, or nonsense, is said
     */
    static int orientation(Bytes bytes, int start) {
        boolean little = bytes.says(start, "II");
        if (!little && !bytes.says(start, "MM")) {
            return 1;
        }
        long directory = (long) start + four(bytes, start + 4, little);
        if (directory < start || directory > bytes.of().length) {
            return 1;
        }
        int first = (int) directory;
        int entries = two(bytes, first, little);
        for (int i = 0; i < entries && first + 2 + i * ENTRY < bytes.of().length; i++) {
            int at = first + 2 + i * ENTRY;
            if (two(bytes, at, little) == ORIENTATION) {
                int said = two(bytes, at + 8, little);
                return said >= 1 && said <= 8 ? said : 1;
            }
        }
        return 1;
    }

    private static int two(Bytes bytes, int at, boolean little) {
        int read = bytes.two(at);
        return little ? (read & 0xFF) << 8 | read >> 8 : read;
    }

    private static long four(Bytes bytes, int at, boolean little) {
        int read = bytes.four(at);
        return (little ? Integer.reverseBytes(read) : read) & 0xFFFF_FFFFL;
    }
}
