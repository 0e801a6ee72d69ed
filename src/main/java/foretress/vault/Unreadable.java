package foretress.vault;

/** A sealed text that does not open: altered, moved from its place, another client's, or its key is gone. */
public class Unreadable extends RuntimeException {
    Unreadable(String place, Throwable cause) {
        super("what is stored at " + place + " does not open with its key", cause);
    }
}
