package foretress.start;

import foretress.backup.Marks;
import foretress.vault.MasterKeys;
import java.io.IOException;
import java.io.PrintStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "new-master-key", description = {
    "Adds a new master key to master.key, whether the server runs or not; a running one takes it into use by itself.",
    "With several servers copy master.key to each of them before its moment (--in) comes.",
    "With --drop it takes away the keys of before, once nothing in the store needs them." })
final class NewMasterKeyCommand extends StoreCommand {
    @Option(names = "--in", paramLabel = "MINUTES", defaultValue = "0",
        description = "When the new key is first used: minutes from now; otherwise at once.") int minutes;
    @Option(names = "--drop", description = "Take away the keys of before.") boolean drop;

    NewMasterKeyCommand(PrintStream out, PrintStream err) {
        super(out, err);
    }

    @Override
    int run(Settings settings, KeyFolder keys) throws StartRefused, IOException, SQLException {
        keys.needAll();
        return drop ? drop(settings, keys) : add(keys);
    }

    private int add(KeyFolder keys) throws StartRefused, IOException {
        if (minutes < 0) {
            err.println("A new key cannot be in use before it is made: --in takes minutes from now.");
            return BAD_INPUT;
        }
        Instant from = clock.instant().plus(Duration.ofMinutes(minutes));
        keys.addMaster(from);
        out.println("A new master key stands in %s and is used from %s on.".formatted(keys.file(Key.MASTER), from));
        out.println("Copy the file away now, in place of the copy you have. Print new shares if you keep shares.");
        out.println("Keep the keys of before as long as there is a backup from before.");
        return FINE;
    }

    private int drop(Settings settings, KeyFolder keys) throws StartRefused, IOException, SQLException {
        MasterKeys all = keys.masters();
        MasterKeys kept = all.withoutBefore(clock.instant());
        if (kept.newestFirst().size() == all.newestFirst().size()) {
            out.println("There is no key of before in %s.".formatted(keys.file(Key.MASTER)));
            return FINE;
        }
        try (Connection connection = Store.of(settings).openExisting()) {
            Optional<String> belongs = Marks.get(connection, "keys");
            if (belongs.filter(said -> said.startsWith(all.at(clock.instant()).fingerprint())).isEmpty()) {
                err.println(
                    "The store still needs a key of before. Let the server run for some minutes, then try again.");
                return BAD_INPUT;
            }
        }
        keys.putMasters(kept);
        out.println("The keys of before are gone from %s. Backups from before open only with a copy of them."
            .formatted(keys.file(Key.MASTER)));
        return FINE;
    }
}
