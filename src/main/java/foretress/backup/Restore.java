package foretress.backup;

import foretress.ledger.Ledger;
import foretress.ledger.StoredChain;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;
import javax.sql.DataSource;

/** Fills an empty store from a backup, or from another store, and believes nothing before it is checked. */
public final class Restore {
    /** @param papers how many signed papers were opened and found to be the very bytes that were signed */
    public record Restored(Counted counted, long entries, int papers, Severed severed) {}

    private final DataSource empty;
    private final String masterKey;
    private final Instant now;

    /**
     * @param empty no table in it yet
     * @param masterKey base64; the one the store was made with
     */
    public Restore(DataSource empty, String masterKey, Instant now) {
        this.empty = empty;
        this.masterKey = masterKey;
        this.now = now;
    }

    /** Where the rows come from. */
    private interface From {
        Counted into(Reading.To to) throws IOException, SQLException;
    }

    /**
     * What was open at the moment of the backup is closed: links, sessions, codes, programs' tokens, mails that waited.
     *
     * @throws IOException with a sentence, when the backup is not whole or does not come out as it was counted
     */
    public Restored from(Path backup, BackupKey key) throws IOException, SQLException, GeneralSecurityException {
        Counted counted = fill(to -> BackupFile.read(backup, key, to));
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

    private Restored checked(Counted counted, Severed severed)
        throws IOException, SQLException, GeneralSecurityException {
        try (Connection connection = empty.getConnection()) {
            Ledger.Checked chain = StoredChain.check(connection);
            if (chain.firstBroken().isPresent()) {
                throw new IOException("the audit chain is broken at entry " + chain.firstBroken().get());
            }
            return new Restored(counted, chain.entries(), Papers.check(connection, masterKey), severed);
        }
    }

    /** The rows in one transaction, counted and hashed anew before it ends; then the tables are brought to this program's version. */
    private Counted fill(From from) throws IOException, SQLException {
        var schema = new Schema(empty, masterKey);
        Counted counted;
        try (Connection connection = empty.getConnection()) {
            if (!Catalogue.isEmpty(connection)) {
                throw new IOException("the place to restore into is not empty");
            }
            connection.setAutoCommit(false);
            counted = from.into(new Loading(connection, schema));
            connection.commit();
            connection.setAutoCommit(true);
            expectSame(counted, Snapshot.count(connection, counted.takenAt()));
        }
        schema.bringToToday();
        return counted;
    }

    private static void expectSame(Counted meant, Counted found) throws IOException {
        Map<String, String> unlike = meant.unlike(found);
        if (!unlike.isEmpty()) {
            throw new IOException("these tables did not come out as they were: " + unlike);
        }
    }
}
