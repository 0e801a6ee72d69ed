package foretress.web;

import java.util.Optional;
import java.util.regex.Pattern;

/** A path inside this application and nothing else, so that a link cannot lead elsewhere after signing in. */
public final class LocalPath {
    private static final Pattern SAFE = Pattern.compile("/(?!/)[A-Za-z0-9/_.~-]*");

    private LocalPath() {}

    public static Optional<String> of(String text) {
        return text != null && SAFE.matcher(text).matches() ? Optional.of(text) : Optional.empty();
    }
}
