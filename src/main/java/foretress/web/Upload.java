package foretress.web;

import foretress.picture.Redrawing;
import foretress.picture.Refusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** The only reader of what came as a file; a test holds that nobody else reads one. */
public final class Upload {
    private Upload() {}

    /** @return nothing when no file was chosen; no more than a request may weigh */
    public static byte[] bytes(FileUpload sent) {
        try {
            return sent == null ? new byte[0] : Files.readAllBytes(sent.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Why it was not kept, and what to do. */
    public static String said(Refusal why, PictureWords say) {
        return switch (why) {
            case NOT_KNOWN -> say.not_known();
            case TOO_HEAVY -> say.too_heavy(Redrawing.MOST_BYTES / 1_000_000);
            case TOO_MANY_PIXELS -> say.too_many_pixels(Redrawing.MOST_MEGAPIXELS);
            case BROKEN -> say.broken();
            case BUSY -> say.busy();
        };
    }
}
