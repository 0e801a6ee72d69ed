package foretress.start;

import foretress.backup.Marks;
import foretress.running.OwnerOnly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything that has to be right before the server runs: folders, keys, database, address. Leaves what it finds as it is. */
class Preparation {
    private final Settings settings;
    private final Store.Properties properties;
    private final KeyFolder keys;
    private final Store store;
    private final List<String> said = new ArrayList<>();

    Preparation(Settings settings, Store.Properties properties) {
        this.settings = settings;
        this.properties = properties;
        this.keys = new KeyFolder(settings.keys());
        this.store = Store.of(settings);
    }

    /** @return what the person at the console should know before the server is up */
    List<String> prepare() throws StartRefused {
        var address = new ListenAddress(settings);
        address.check();
        prepareFolders();
        if (store.exists()) {
            useExisting();
        } else {
            beginNew();
        }
        tell(address);
        return said;
    }

    private void prepareFolders() throws StartRefused {
        try {
            OwnerOnly.folder(settings.data());
            for (Path open : keys.openToOthers()) {
                said.add("Others on this machine can read the key " + open + "; close it with chmod 600.");
            }
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private void useExisting() throws StartRefused {
        keys.needAll();
        try (Connection connection = store.open()) {
            if (keys.makeReplaceable().contains(Key.BACKUP)) {
                said.add(keys.backupKeyWasMade());
            }
            checkMarks(connection);
        } catch (SQLException e) {
            throw new StartRefused(StartRefused.Reason.DATABASE_DAMAGED,
                "The database opens but cannot be read, and was left as it is: %s", e.getMessage());
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private void checkMarks(Connection connection) throws SQLException, StartRefused {
        try (ResultSet tables =
            connection.getMetaData().getTables(null, null, "%", new String[] { "TABLE", "BASE TABLE" })) {
            boolean found = false;
            while (tables.next()) {
                found |= tables.getString("TABLE_NAME").equalsIgnoreCase("mark");
            }
            if (!found) {
                return;
            } // killed before the schema was made
        }
        Optional<String> kind = Marks.get(connection, "kind");
        if (kind.isPresent() && !kind.get().equals(kind())) {
            throw mixed();
        }
        Optional<String> made = Marks.get(connection, "keys");
        if (made.isPresent() && !keys.fingerprints().contains(made.get())) {
            throw new StartRefused(StartRefused.Reason.KEY_WRONG,
                "The keys in %s are not the ones this database was made with. Put the right keys back.", keys.folder());
        }
    }

    private StartRefused mixed() {
        return settings.demo()
            ? new StartRefused(StartRefused.Reason.DEMO_MIXED,
                "This database belongs to a real salon, and the demo is never mixed into one. "
                    + "Start without FORETRESS_DEMO, or give the demo a folder of its own with FORETRESS_DATA.")
            : new StartRefused(StartRefused.Reason.DEMO_MIXED,
                "This database holds the demo's invented salon, and a real one is never mixed into it. "
                    + "Start with FORETRESS_DEMO=1, or name another folder with FORETRESS_DATA.");
    }

    private void beginNew() throws StartRefused {
        try {
            if (!keys.makeMissing().isEmpty()) {
                said.add("Keys were made in " + keys.folder() + ". Copy them to a place away from this machine and "
                    + "from the database's backups: without them nobody, you included, can ever read what clients said.");
            }
            if (store instanceof H2Store h2) {
                h2.begin();
            }
        } catch (IOException e) {
            throw unwritable(e);
        }
    }

    private void tell(ListenAddress address) throws StartRefused {
        store.tell(properties);
        properties.set("foretress.data-folder", settings.data().toString());
        properties.set("foretress.demo", Boolean.toString(settings.demo()));
        properties.set("foretress.kind", kind());
        properties.set("foretress.keys-fingerprint", keys.fingerprints().get(0));
        properties.set("foretress.master-key", keys.masters().text().strip().replace("\n", ","));
        properties.set("foretress.master-key-file", keys.file(Key.MASTER).toString());
        properties.set("foretress.ledger-key", base64(keys.read(Key.LEDGER)));
        properties.set("foretress.session-key", base64(keys.read(Key.SESSION)));
        properties.set("foretress.seal-key", base64(keys.read(Key.SEAL)));
        properties.set("foretress.backup-key", base64(keys.read(Key.BACKUP)));
        properties.set("foretress.backups", settings.backups().toString());
        address.tell(properties);
    }

    private String kind() {
        return settings.demo() ? "demo" : "real";
    }

    static String base64(byte[] key) {
        return Base64.getEncoder().encodeToString(key);
    }

    private StartRefused unwritable(IOException e) {
        return new StartRefused(StartRefused.Reason.FOLDER,
            "The folder %s or %s cannot be used by the user who starts the server: %s.", settings.data(),
            keys.folder(), e);
    }

    /** The database's file is made by the server; its folder is closed already, and so is the file then. */
    static void closeFiles(Settings settings) throws IOException {
        try (Stream<Path> files = Files.list(settings.data())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                OwnerOnly.close(file);
            }
        }
    }
}
