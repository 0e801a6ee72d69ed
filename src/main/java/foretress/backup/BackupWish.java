package foretress.backup;

import foretress.running.OwnerOnly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/** How a command gets a backup out of a running server, which alone may open its file: it lays a wish into the folder, and the server takes it away. */
public final class BackupWish {
    static final String FILE = "wanted";
    private static final long LOOK_MILLIS = 200;

    private BackupWish() {}

    /** @return the new backup; empty when the server made none in that time */
    public static Optional<Path> ask(BackupShelf shelf, Duration patience) throws IOException, InterruptedException {
        OwnerOnly.folder(shelf.folder());
        Optional<Path> before = shelf.all().stream().findFirst();
        Path wish = shelf.folder().resolve(FILE);
        OwnerOnly.write(wish, "");
        for (long waited = 0; waited < patience.toMillis() && Files.exists(wish); waited += LOOK_MILLIS) {
            Thread.sleep(LOOK_MILLIS);
        }
        Files.deleteIfExists(wish);
        return shelf.all().stream().findFirst().filter(newest -> !before.equals(Optional.of(newest)));
    }
}
