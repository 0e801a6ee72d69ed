package foretress.running;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.LongSupplier;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Room on the device that holds the data. Without it nothing can be kept. */
@Singleton
public class Space {
    private static final long MEBIBYTE = 1L << 20;

    private final LongSupplier usable;
    private final long least;

    /** @param least in MiB; less than that is as good as none, since a database needs room even to close */
    @Inject
    Space(@ConfigProperty(name = "foretress.data-folder", defaultValue = ".") String folder,
        @ConfigProperty(name = "foretress.least-space", defaultValue = "64") int least) {
        this(() -> usable(Path.of(folder)), least);
    }

    Space(LongSupplier usable, int least) {
        this.usable = usable;
        this.least = least * MEBIBYTE;
    }

    public boolean isOut() {
        return usable.getAsLong() < least;
    }

    private static long usable(Path folder) {
        try {
            return Files.getFileStore(folder).getUsableSpace();
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }
}
