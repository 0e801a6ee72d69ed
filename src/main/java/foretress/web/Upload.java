package foretress.web;

import foretress.picture.Paper;
import foretress.picture.PhotoRedrawing;
import foretress.picture.PictureResult;
import foretress.picture.RedrawnPhoto;
import foretress.picture.UploadRefusal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Optional;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** The only reader of what came as a file: what it gives is drawn anew or looked through. A test holds that nobody else reads one. */
public final class Upload {
    private Upload() {}

    /** The photo, drawn anew; empty when it is none, which is said beside the field. */
    public static Optional<RedrawnPhoto> photo(FileUpload sent, String field, Mistakes mistakes, PictureWords say) {
        return taken(PhotoRedrawing.of(bytes(sent)), say.not_known(), field, mistakes, say);
    }

    /** The photo or document; empty when it is neither, which is said beside the field. */
    public static Optional<Paper> paper(FileUpload sent, String field, Mistakes mistakes, PictureWords say) {
        return taken(Paper.of(bytes(sent)), say.paper_not_known(), field, mistakes, say);
    }

    /** The bytes as they came, for a check that keeps and shows nothing of them; none when no file was chosen. */
    public static byte[] unread(FileUpload sent) {
        return bytes(sent);
    }

    private static <T> Optional<T> taken(PictureResult<T> taken, String notKnown, String field, Mistakes mistakes,
        PictureWords say) {
        taken.refused().ifPresent(why -> mistakes.add(field, said(why, notKnown, say)));
        return taken.kept();
    }

    /** Nothing when no file was chosen; no more than a request may weigh. */
    private static byte[] bytes(FileUpload sent) {
        try {
            return sent == null ? new byte[0] : Files.readAllBytes(sent.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Why it was not kept, and what to do. */
    private static String said(UploadRefusal why, String notKnown, PictureWords say) {
        return switch (why) {
            case NOT_KNOWN -> notKnown;
            case TOO_HEAVY -> say.too_heavy(PhotoRedrawing.MOST_BYTES / 1_000_000);
            case TOO_MANY_PIXELS -> say.too_many_pixels(PhotoRedrawing.MOST_MEGAPIXELS);
            case BROKEN -> say.broken();
            case BUSY -> say.busy();
        };
    }
}
