package foretress.running;

/** What a room has to do once at start, after the schema is in place and before the first request. */
public interface AtStart {
    /** Lower runs first; 0 checks the database, 100 is ordinary, 1000 may rely on all others. */
    default int order() {
        return 100;
    }

    void run();
}
