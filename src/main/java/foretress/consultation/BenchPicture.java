package foretress.consultation;

import java.util.Optional;

/** Photos that a browser can show, told by their first bytes and not by what they are called. */
final class BenchPicture {
    static final int MOST_BYTES = 6_000_000;

    private BenchPicture() {}

    /** JPEG (ISO 10918-1), PNG (RFC 2083) or WebP (RFC 9649), by their signatures. */
    static Optional<String> type(byte[] bytes) {
        if (starts(bytes, 0, 0xFF, 0xD8, 0xFF)) {
            return Optional.of("image/jpeg");
        }
        if (starts(bytes, 0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return Optional.of("image/png");
        }
        return starts(bytes, 0, 'R', 'I', 'F', 'F') && starts(bytes, 8, 'W', 'E', 'B', 'P') ? Optional.of("image/webp") : Optional.empty();
    }

    private static boolean starts(byte[] bytes, int at, int... signature) {
        for (int i = 0; i < signature.length; i++) {
            if (bytes.length <= at + i || (bytes[at + i] & 0xFF) != signature[i]) {
                return false;
            }
        }
        return true;
    }
}
