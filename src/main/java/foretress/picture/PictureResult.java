package foretress.picture;

import java.util.Optional;

/** What became of a file that was sent: exactly one of the two is there. */
public record PictureResult<T>(Optional<T> kept, Optional<UploadRefusal> refused) {
    static <T> PictureResult<T> kept(T kept) {
        return new PictureResult<>(Optional.of(kept), Optional.empty());
    }

    static <T> PictureResult<T> refused(UploadRefusal why) {
        return new PictureResult<>(Optional.empty(), Optional.of(why));
    }
}
