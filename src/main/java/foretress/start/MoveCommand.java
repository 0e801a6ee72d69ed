package foretress.start;

import foretress.backup.Restore;
import foretress.running.OwnerOnly;
import java.io.IOException;
import java.io.PrintStream;
import java.security.GeneralSecurityException;
import java.sql.Connection;
import java.sql.SQLException;
import picocli.CommandLine.Command;

@Command(name = "move-to-postgres",
    description = {
        "Copies the salon from its H2 file into the empty PostgreSQL database that QUARKUS_DATASOURCE_JDBC_URL names, and compares.",
        "Stop the server first. The file is left as it is; start the program built for PostgreSQL afterwards, with the same keys." })
final class MoveCommand extends StoreCommand {
    MoveCommand(PrintStream out, PrintStream err) {
        super(out, err);
    }

    @Override
    int run(Settings settings, KeyFolder keys)
        throws StartRefused, IOException, SQLException, GeneralSecurityException {
        var with = new Restore.Keys(keys.masters().text(), keys.fingerprints());
        OwnerOnly.folder(settings.backups());
        try (Connection old = new H2Store(settings, keys).open()) {
            Restore.Restored moved = new Restore(new PostgresStore(settings).source(), with, clock.instant())
                .move(old, settings.backups());
            RestoreCommand.tell(out, err, moved);
            return moved.sound() ? FINE : FOUND;
        }
    }
}
