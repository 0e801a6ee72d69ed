package foretress.bench;

/**
 * By what other devices know that a page of the bench is another one now.
 *
 * @param version changes whenever anything there does, the clocks apart
 * @param words the newest thing, for people who cannot see the page change
 */
public record BenchNews(String version, String words) {}
