package foretress.vault;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.security.GeneralSecurityException;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Fills what is sealed up to one of a few lengths, so that the length of a sealed text tells little of what was said: a word fits
 * into 256 bytes, a document into 2 KiB and so on by fours, a paper into 16 KiB. It is deflated first, which is safe here: nobody chooses a
 * part of it and watches the length of the rest, and the length is filled up in any case.
 */
enum SizeClass {
    /** A code, a name, a few ids. */
    WORD(256),
    /** Answers of a topic, a reading, a note: everything ordinary. */
    DOCUMENT(2048),
    /** What grows with every finding: an assessment, a signed text. One that is twice as long as another is still no longer. */
    PAPER(16_384);

    /** Stands before a text that is filled up; older ones begin with base64 at once. */
    static final String MARK = ".";

    private static final int HEAD = 9;
    private static final int STEPS = 1 << 20;

    private final int least;

    SizeClass(int least) {
        this.least = least;
    }

    /** Length of the content, length before deflating, whether it was deflated; then the content; then zeros. */
    static byte[] fill(byte[] plain, SizeClass from) {
        byte[] small = deflated(plain);
        boolean helps = small.length < plain.length;
        byte[] content = helps ? small : plain;
        return ByteBuffer.allocate(room(HEAD + content.length, from))
            .putInt(content.length).putInt(plain.length).put((byte) (helps ? 1 : 0)).put(content).array();
    }

    static byte[] unfill(byte[] filled) throws GeneralSecurityException {
        ByteBuffer read = ByteBuffer.wrap(filled);
        byte[] content = new byte[read.getInt()];
        int plain = read.getInt();
        boolean deflated = read.get() == 1;
        read.get(content);
        return deflated ? inflated(content, plain) : content;
    }

    /** By fours up to a mebibyte; photos and the like beyond it by whole mebibytes. */
    private static int room(int length, SizeClass from) {
        if (length > STEPS) {
            return Math.toIntExact((length + (long) STEPS - 1) / STEPS * STEPS);
        }
        int room = from.least;
        while (room < length) {
            room = room == WORD.least ? DOCUMENT.least : room * 4;
        }
        return Math.min(room, STEPS);
    }

    private static byte[] deflated(byte[] plain) {
        var deflater = new Deflater(Deflater.DEFAULT_COMPRESSION, true);
        try {
            deflater.setInput(plain);
            deflater.finish();
            var out = new ByteArrayOutputStream(plain.length / 2 + 64);
            byte[] piece = new byte[8192];
            while (!deflater.finished()) {
                out.write(piece, 0, deflater.deflate(piece));
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    private static byte[] inflated(byte[] content, int length) throws GeneralSecurityException {
        var inflater = new Inflater(true);
        try {
            inflater.setInput(content);
            byte[] plain = new byte[length];
            int at = 0;
            while (at < length) {
                int read = inflater.inflate(plain, at, length - at);
                if (read == 0) {
                    throw new GeneralSecurityException("what was sealed ends too soon");
                }
                at += read;
            }
            return plain;
        } catch (DataFormatException e) {
            throw new GeneralSecurityException(e);
        } finally {
            inflater.end();
        }
    }
}
