package foretress.bench;

/** The machine's counter that only ever runs on, whatever the clock on the wall is set to. */
public interface BenchNanos {
    /** Nanoseconds since some moment of this start of the server. */
    long read();
}
