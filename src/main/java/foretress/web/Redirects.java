package foretress.web;

import java.util.regex.Pattern;

/** Where a page sends the browser on: to a path here. The framework writes the host a request claimed in front of it, which may be anybody's. */
final class Redirects {
    private static final Pattern HOST = Pattern.compile("^https?://[^/?#]*", Pattern.CASE_INSENSITIVE);

    private Redirects() {}

    /** @return a relative reference (RFC 9110, 10.2.2), which no browser reads as another host */
    static String here(String location) {
        String path = HOST.matcher(location).replaceFirst("");
        return path.isEmpty() ? "/" : path.replaceFirst("^[/\\\\]{2,}", "/");
    }
}
