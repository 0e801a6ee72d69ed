package foretress.running;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;

/** Folders and files nobody but the person who runs the server may look into. */
public final class OwnerOnly {
    private static final boolean POSIX = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

    private OwnerOnly() {}

    /** Makes the folder, or closes one that is there to others. */
    public static void folder(Path folder) throws IOException {
        Files.createDirectories(folder);
        if (POSIX) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    public static void close(Path file) throws IOException {
        if (POSIX) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    public static boolean isOpenToOthers(Path file) throws IOException {
        return POSIX && PosixFilePermissions.toString(Files.getPosixFilePermissions(file)).substring(3).contains("r");
    }

    /** Written whole or not at all, and on the device before anything is encrypted with it. */
    public static void write(Path file, String text) throws IOException {
        Path half = Files.createTempFile(file.getParent(), file.getFileName().toString(), ".new");
        close(half);
        try (FileChannel channel = FileChannel.open(half, StandardOpenOption.WRITE)) {
            channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII)));
            channel.force(true);
        }
        Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
        settle(file.getParent());
    }

    /** What was renamed or made in this folder is there after a power cut too. */
    public static void settle(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
