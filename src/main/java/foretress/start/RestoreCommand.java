package foretress.start;

import foretress.backup.Later;
import foretress.backup.Restore;
import foretress.running.OwnerOnly;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import javax.sql.DataSource;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

@Command(name = "restore", description = { "Restores a backup into an empty folder or database, and checks what came.",
    "Needs master.key, ledger.key and backup.key of the salon in the folder of the keys." })
final class RestoreCommand extends StoreCommand {
    @Parameters(paramLabel = "FILE", description = "The backup.") Path file;

    @Option(names = "--old", paramLabel = "FOLDER",
        description = "The old data folder, if it can still be read: what happened after the backup is listed.") Path old;

    RestoreCommand(PrintStream out, PrintStream err) {
        super(out, err);
    }

    @Override
    int run(Settings settings, KeyFolder keys)
        throws StartRefused, IOException, SQLException, GeneralSecurityException {
        keys.needForRestore();
        return settings.postgres() ? intoPostgres(settings, keys) : intoFolder(settings, keys);
    }

    private int intoPostgres(Settings settings, KeyFolder keys)
        throws StartRefused, IOException, SQLException, GeneralSecurityException {
        keys.makeMissing();
        return restore(new PostgresStore(settings).source(), keys, settings);
    }

    private int intoFolder(Settings settings, KeyFolder keys)
        throws StartRefused, IOException, SQLException, GeneralSecurityException {
        var store = new H2Store(settings, keys);
        if (store.exists()) {
            err.println("There is a database in %s already. Name an empty folder with FORETRESS_DATA."
                .formatted(settings.data()));
            return BAD_INPUT;
        }
        OwnerOnly.folder(settings.data());
        keys.makeMissing();
        store.clear();
        try {
            int status = restore(store.apart(), keys, settings);
            store.settle();
            return status;
        } finally {
            store.clear();
        }
    }

    private int restore(DataSource empty, KeyFolder keys, Settings settings)
        throws StartRefused, IOException, SQLException, GeneralSecurityException {
        var with = new Restore.Keys(keys.masters().text(), keys.fingerprints());
        Restore.Restored restored =
            new Restore(empty, with, clock.instant()).from(file, BackupCommand.key(keys));
        tell(out, err, restored);
        out.println(
            "closed, since nobody can tell which of them were taken back later: %d links, %d sessions and codes, "
                .formatted(restored.severed().links(), restored.severed().sessions())
                + "%d programs' tokens; %d waiting mails are not sent".formatted(restored.severed().programs(),
                    restored.severed().mails()));
        tellLater(empty, restored, settings);
        return restored.sound() ? FINE : FOUND;
    }

    /** The same for whatever filled a store. */
    static void tell(PrintStream out, PrintStream err, Restore.Restored restored) {
        out.println("came whole: %d tables, %d rows, as they stood at %s; every count and hash is the same"
            .formatted(restored.counted().tables().size(), restored.counted().rows(),
                Instant.ofEpochMilli(restored.counted().takenAt())));
        restored.chain().firstBroken().ifPresentOrElse(
            broken -> err.println("the audit chain is broken at entry %d, as it was in the backup".formatted(broken)),
            () -> out.println("the audit chain hangs together: %d entries".formatted(restored.chain().whole())));
        restored.chain().against().ifPresent(slip -> err.println(
            "the audit chain was written anew before the backup: the slip of %s in the store is of another chain"
                .formatted(slip.day())));
        out.println("signed papers opened: %d".formatted(restored.papers().opened()));
        restored.papers().altered()
            .forEach(paper -> err.println("the signed paper %s is not what was signed".formatted(paper)));
    }

    /** In the old folder itself, where they lie there; for the new one a key of its own was made. */
    private KeyFolder keysOfOld(Settings of) {
        var within = new KeyFolder(of.data().resolve("keys"));
        return within.has(Key.DATABASE) ? within : new KeyFolder(of.keys());
    }

    private void tellLater(DataSource restored, Restore.Restored what, Settings settings) {
        if (old == null) {
            out.println("What happened after %s is not in this store: consents, withdrawals, cancelled visits. "
                .formatted(Instant.ofEpochMilli(what.counted().takenAt()))
                + "Ask staff and clients. With --old FOLDER the old store would list it, if it can still be read.");
            return;
        }
        Settings of = settings.inFolder(old);
        try (Connection now = restored.getConnection(); Connection before = new H2Store(of, keysOfOld(of)).open()) {
            List<String> lines = Later.than(now, before);
            out.println("%d acts happened after the backup and are not in this store:".formatted(lines.size()));
            lines.forEach(out::println);
        } catch (StartRefused | SQLException | IllegalStateException e) {
            err.println("The old store could not be asked what happened after the backup: " + e.getMessage());
        }
    }
}
