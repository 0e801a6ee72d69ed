package foretress.bench;

/**
 * One thing seen on one tuft.
 *
 * @param tuft the tuft's letter
 * @param second seconds since the tufts went in, 0 or more
 */
public record Seen(String tuft, TuftSign sign, long second) {
    /** Lightening within the first minute is lightening at once (our proposal; teaching pages say "immediately"). */
    public static final long AT_ONCE_SECONDS = 60;

    public Seen {
        if (second < 0) {
            throw new IllegalArgumentException("seen before the tufts went in: %d s".formatted(second));
        }
    }

    /** Slight lightening within the first minute is not slight. */
    public boolean alarming() {
        return sign.alarming() || sign == TuftSign.SLIGHTLY_LIGHTER && second < AT_ONCE_SECONDS;
    }
}
