package foretress.backup;

import foretress.running.OwnerOnly;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;

/** One backup: a line that says which key closes it, then a {@link Snapshot}, compressed and encrypted. */
public final class BackupFile {
    private static final String BEGINS = "FORETRESS BACKUP 1 ";
    private static final int LINE = BEGINS.length() + 16 + 1;
    private static final int BUFFER = 1 << 16;

    private BackupFile() {}

    /**
     * Written beside its place, forced to the device, read back to its end, and only then given its name.
     *
     * @return what it holds
     */
    public static StoreCount write(Path file, BackupKey key, Connection connection, long now)
        throws IOException, SQLException {
        OwnerOnly.folder(file.toAbsolutePath().getParent());
        Path half = Files.createTempFile(file.toAbsolutePath().getParent(), file.getFileName().toString(), ".half");
        try {
            OwnerOnly.close(half);
            StoreCount written = writeHalf(half, key, connection, now);
            if (!written.equals(verify(half, key))) {
                throw new IOException("the backup does not read back as it was written");
            }
            Files.move(half, file, StandardCopyOption.ATOMIC_MOVE);
            OwnerOnly.settle(file.toAbsolutePath().getParent());
            return written;
        } finally {
            Files.deleteIfExists(half);
        }
    }

    private static StoreCount writeHalf(Path half, BackupKey key, Connection connection, long now)
        throws IOException, SQLException {
        String line = BEGINS + key.name() + "\n";
        try (FileChannel channel = FileChannel.open(half, StandardOpenOption.WRITE)) {
            OutputStream plain = new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER);
            plain.write(ascii(line));
            var closing = new Kept(plain);
            StoreCount written;
            try (OutputStream sealed = key.aead().newEncryptingStream(closing, ascii(line));
                OutputStream small = new GZIPOutputStream(new BufferedOutputStream(sealed, BUFFER), BUFFER)) {
                written = Snapshot.write(connection, now, small);
            }
            plain.flush();
            channel.force(true);
            return written;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("the backup could not be encrypted", e);
        }
    }

    /** Stays open when the stream around it ends: what it holds is yet to be forced to the device. */
    private static final class Kept extends java.io.FilterOutputStream {
        Kept(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            out.write(bytes, from, length);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }

    /** Reads it to its end and checks every count and sum. @throws IOException with a sentence, when it is not whole or this is not its key */
    public static StoreCount verify(Path file, BackupKey key) throws IOException, SQLException {
        return read(file, key, new BackupReading.To() {});
    }

    static StoreCount read(Path file, BackupKey key, BackupReading.To to) throws IOException, SQLException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), BUFFER)) {
            String line = new String(in.readNBytes(LINE), StandardCharsets.US_ASCII);
            if (!line.startsWith(BEGINS)) {
                throw new IOException("%s is no backup of this program".formatted(file));
            }
            if (!line.equals(BEGINS + key.name() + "\n")) {
                throw new IOException("%s was closed with the backup key %s, and this one is %s".formatted(file,
                    line.substring(BEGINS.length()).strip(), key.name()));
            }
            try (InputStream open = new GZIPInputStream(key.aead().newDecryptingStream(in, ascii(line)), BUFFER)) {
                return BackupReading.read(open, to);
            }
        } catch (GeneralSecurityException e) {
            throw new IOException("%s does not open".formatted(file), e);
        }
    }

    private static byte[] ascii(String line) {
        return line.getBytes(StandardCharsets.US_ASCII);
    }
}
