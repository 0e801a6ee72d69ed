package foretress.picture;

import java.nio.charset.StandardCharsets;

/** Numbers in bytes. What lies beyond the end is 0. */
record Bytes(byte[] of) {
    int one(int at) {
        return at < 0 || at >= of.length ? 0 : of[at] & 0xFF;
    }

    int two(int at) {
        return one(at) << 8 | one(at + 1);
    }

    int four(int at) {
        return two(at) << 16 | two(at + 2);
    }

    boolean says(int at, String ascii) {
        return at >= 0 && at + ascii.length() <= of.length
            && new String(of, at, ascii.length(), StandardCharsets.US_ASCII).equals(ascii);
    }
}
