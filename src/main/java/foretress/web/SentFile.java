package foretress.web;

import jakarta.ws.rs.core.Response;

/**
 * Hands out what somebody sent. Whatever is in it, it runs nothing and belongs to no page of ours: a sandbox with nothing in it
 * (CSP Level 3, 6.4.2; OWASP File Upload Cheat Sheet), a fixed type, and a name of our own.
 */
public final class SentFile {
    static final String SANDBOX = "sandbox; default-src 'none'";
    private static final String POLICY = "Content-Security-Policy";

    private SentFile() {}

    /** @param jpeg drawn here; a page may show it */
    public static Response photo(byte[] jpeg) {
        return Response.ok(jpeg).type("image/jpeg").header("Content-Disposition", "inline; filename=\"photo.jpg\"")
            .header(POLICY, SANDBOX).build();
    }

    /** What was not made here is saved, never shown. */
    public static Response download(byte[] bytes, String mediaType, String name) {
        return Response.ok(bytes).type(mediaType).header("Content-Disposition", "attachment; filename=\"" + name + "\"")
            .header(POLICY, SANDBOX).build();
    }
}
