package foretress.backup;

import foretress.ledger.TrailProof;
import foretress.ledger.TrailVerdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;

/** Fills an empty store from a backup, or from another store, and believes nothing before it is checked. */
public final class Restore {
    /**
     * @param master as {@code vault.MasterKeys} reads it
     * @param fingerprints of the keys, one of which the store says it belongs to; empty where none was said
     */
    public record Keys(String master, List<String> fingerprints) {
        public Keys {
            fingerprints = List.copyOf(fingerprints);
        }
    }

    /** What came, and what the checks found; a chain that was broken before the backup is broken after it. */
    public record Restored(StoreCount counted, TrailVerdict chain, Papers.Checked papers, Severed severed) {
        public boolean sound() {
            return chain.holds() && papers.altered().isEmpty();
        }
    }

    private final DataSource empty;
    private final Keys keys;
    private final Instant now;

    /**
     * @param empty no table in it yet
     */
    public Restore(DataSource empty, Keys keys, Instant now) {
        this.empty = empty;
        this.keys = keys;
        this.now = now;
    }

    /** Where the rows come from. */
    private interface From {
        StoreCount into(BackupReading.To to) throws IOException, SQLException;
    }

    /**
     * What was open at the moment of the backup is closed: links, sessions, codes, programs' tokens, mails that waited.
     *
     * @throws IOException with a sentence, when the backup is not whole or does not come out as it was counted
     */
    public Restored from(Path backup, BackupKey key) throws IOException, SQLException, GeneralSecurityException {
        StoreCount counted = fill(to -> BackupFile.read(backup, key, to));
        Severed severed = Severed.all(empty, now);
        return checked(counted, severed);
    }

    /**
     * The whole store, from one database into another kind. The old one is left as it is; stop its server first, and let it rest then.
     * Nothing is closed, for nothing happened in between.
     *
     * @param folder for what is written on the way, encrypted with a key that is kept nowhere
     */
    public Restored move(Connection old, Path folder) throws IOException, SQLException, GeneralSecurityException {
        byte[] once = new byte[32];
        new SecureRandom().nextBytes(once);
        var key = new BackupKey(Base64.getEncoder().encodeToString(once));
        Path between = folder.resolve("moving.backup");
        try {
            BackupFile.write(between, key, old, now.toEpochMilli());
            return checked(fill(to -> BackupFile.read(between, key, to)), Severed.NOTHING);
        } finally {
            Files.deleteIfExists(between);
        }
    }

    private Restored checked(StoreCount counted, Severed severed) throws SQLException, GeneralSecurityException {
        try (Connection connection = empty.getConnection()) {
            return new Restored(counted, TrailProof.ofStore(connection, TrailProof.keptIn(connection)),
                Papers.check(connection, keys.master()),
                severed);
        }
    }

    /** The rows in one transaction, counted and hashed anew; then the tables are brought to this program's version. What fails leaves nothing. */
    private StoreCount fill(From from) throws IOException, SQLException {
        var schema = new Schema(empty, keys.master());
        try (Connection connection = empty.getConnection()) {
            if (!Catalogue.isEmpty(connection)) {
                throw new IOException("the place to restore into is not empty");
            }
        }
        boolean done = false;
        try {
            StoreCount counted = load(from, schema);
            schema.bringToToday();
            done = true;
            return counted;
        } finally {
            if (!done) {
                schema.clean();
            }
        }
    }

    private StoreCount load(From from, Schema schema) throws IOException, SQLException {
        try (Connection connection = empty.getConnection()) {
            connection.setAutoCommit(false);
            StoreCount counted;
            boolean done = false;
            try {
                counted = from.into(new Loading(connection, schema));
                expectKeys(Marks.get(connection, "keys"));
                connection.commit();
                done = true;
            } finally {
                if (!done) {
                    connection.rollback();
                }
            }
            connection.setAutoCommit(true);
            expectSame(counted, Snapshot.count(connection, counted.takenAt()));
            return counted;
        }
    }

    private void expectKeys(Optional<String> made) throws IOException {
        if (made.isPresent() && !keys.fingerprints().isEmpty() && !keys.fingerprints().contains(made.get())) {
            throw new IOException(
                "the keys are not the ones this salon was made with: put its master.key and ledger.key there");
        }
    }

    private static void expectSame(StoreCount meant, StoreCount found) throws IOException {
        Map<String, String> unlike = meant.unlike(found);
        if (!unlike.isEmpty()) {
            throw new IOException("these tables did not come out as they were: " + unlike);
        }
    }
}
