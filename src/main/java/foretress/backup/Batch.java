package foretress.backup;

/** Rows that wait to be written together: so many, or so many bytes of them, since a photo weighs as much as ten thousand short rows. */
final class Batch {
    private static final int ROWS = 200;
    private static final long BYTES = 4 << 20;

    private int rows;
    private long bytes;

    /** Takes in a row; whether they should be written now. */
    boolean isFullWith(Object[] row) {
        rows++;
        for (Object value : row) {
            bytes += value instanceof String text ? text.length() : value instanceof byte[] raw ? raw.length : 0;
        }
        return rows >= ROWS || bytes >= BYTES;
    }

    void written() {
        rows = 0;
        bytes = 0;
    }
}
