package foretress.start;

import foretress.backup.BackupFile;
import foretress.backup.BackupKey;
import foretress.backup.BackupShelf;
import foretress.backup.BackupWish;
import foretress.backup.StoreCount;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "backup", description = { "Takes a backup now, whether the server runs or not, and reads it back.",
    "With --check it reads one to its end instead, and says what it holds." })
final class BackupCommand extends StoreCommand {
    private static final Duration PATIENCE = Duration.ofMinutes(10);

    @Option(names = "--check", paramLabel = "FILE", description = "A backup to read.") Path check;

    BackupCommand(PrintStream out, PrintStream err) {
        super(out, err);
    }

    @Override
    int run(Settings settings, KeyFolder keys) throws StartRefused, IOException, SQLException, InterruptedException {
        if (check != null) {
            return told(check, BackupFile.verify(check, key(keys)));
        }
        Store store = settings.postgres() ? new PostgresStore(settings) : new H2Store(settings, keys);
        if (!store.exists()) {
            err.println("There is no database to back up in %s.".formatted(settings.data()));
            return BAD_INPUT;
        }
        try (Connection connection = store.open()) {
            if (keys.makeReplaceable().contains(Key.BACKUP)) {
                out.println(keys.backupKeyWasMade());
            }
            BackupShelf shelf = settings.shelf();
            Path file = shelf.place(clock.instant());
            StoreCount counted = BackupFile.write(file, key(keys), connection, clock.millis());
            shelf.prune();
            return told(file, counted);
        } catch (StartRefused refused) {
            if (refused.reason == StartRefused.Reason.DATABASE_LOCKED) {
                return ask(settings, keys);
            }
            throw refused;
        }
    }

    /** The server has the file open, and takes the backup itself. */
    private int ask(Settings settings, KeyFolder keys)
        throws IOException, StartRefused, InterruptedException, SQLException {
        Optional<Path> file = BackupWish.ask(settings.shelf(), PATIENCE);
        if (file.isEmpty()) {
            err.println("The running server made no backup; its log says why.");
            return BAD_INPUT;
        }
        return told(file.get(), BackupFile.verify(file.get(), key(keys)));
    }

    static BackupKey key(KeyFolder keys) throws StartRefused {
        return new BackupKey(Preparation.base64(keys.read(Key.BACKUP)));
    }

    private int told(Path file, StoreCount counted) {
        out.println("%s: %d tables, %d rows, read back to its end".formatted(file, counted.tables().size(),
            counted.rows()));
        return FINE;
    }
}
