package foretress.web;

import java.net.URI;
import java.util.Optional;
import java.util.regex.Pattern;

/** A path inside this application and nothing else, so that a link cannot lead elsewhere after signing in. */
public final class LocalPath {
    private static final Pattern SAFE = Pattern.compile("/(?!/)[A-Za-z0-9/_.~-]*");
    private static final Pattern QUERY = Pattern.compile("(?:[A-Za-z0-9=&._~+-]|%[0-9A-Fa-f]{2})*");

    private LocalPath() {}

    public static Optional<String> of(String text) {
        return text != null && SAFE.matcher(text).matches() ? Optional.of(text) : Optional.empty();
    }

    /** The same with what follows a question mark, which is left out where anything but plain letters stands in it. */
    static Optional<String> of(URI address) {
        String query = Optional.ofNullable(address.getRawQuery()).map(q -> "?" + q).orElse("");
        return withQuery(address.getRawPath() + query);
    }

    /** The same of what somebody sent. */
    static Optional<String> withQuery(String text) {
        String[] parts = text.split("\\?", 2);
        return of(parts[0]).map(path -> parts.length > 1 && QUERY.matcher(parts[1]).matches() ? text : path);
    }
}
