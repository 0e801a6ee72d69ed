package foretress.bench;

/**
 * How long something has run, told by two counters that no setting of a wall clock can move while the server is up.
 *
 * <p>A dish counts only the seconds in which the server ran and watched: after a restart the test takes that much longer, and
 * never shorter. Hair on a head, and a wait of a day, also count the time in between, as far as the wall clock tells it: there
 * too long would be the harm, or the server sleeps at night.
 *
 * @param ranMillis while the server ran
 * @param steadyMillis the same, and what the wall clock says of the time in between; never less than {@code ranMillis}
 */
public record Run(long ranMillis, long steadyMillis) {
    public static final Run NONE = new Run(0, 0);

    public Run {
        if (ranMillis < 0 || steadyMillis < ranMillis) {
            throw new IllegalArgumentException("not a run: %d ms of %d ms".formatted(ranMillis, steadyMillis));
        }
    }

    /** The next moment of the same server. */
    public Run on(long nanos) {
        long millis = Math.max(0, nanos) / 1_000_000;
        return new Run(ranMillis + millis, steadyMillis + millis);
    }

    /** After a time without a server, as the wall clock tells it; a wall clock put back tells nothing. */
    public Run rested(long wallMillis) {
        return new Run(ranMillis, steadyMillis + Math.max(0, wallMillis));
    }

    /** The further one of each counter: two servers that watch at once have watched no longer than the one that knows of more. */
    Run orFurther(Run other) {
        return new Run(Math.max(ranMillis, other.ranMillis), Math.max(steadyMillis, other.steadyMillis));
    }

    /** From that moment to this one; a moment that was lost in a crash counts as this one. */
    public Run since(Run start) {
        long ran = Math.max(0, ranMillis - start.ranMillis);
        return new Run(ran, Math.max(ran, steadyMillis - start.steadyMillis));
    }
}
