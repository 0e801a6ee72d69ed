package foretress.bench;

/**
 * A clock that runs down.
 *
 * @param id of the test; a script knows the clock by it
 * @param left seconds
 * @param said the same as minutes and seconds
 * @param due what the window's title says when it is down
 */
public record BenchTimer(String id, String href, String name, String client, long left, String said, String due) {}
