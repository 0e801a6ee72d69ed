package foretress.start;

import foretress.running.OwnerOnly;
import foretress.vault.KeyFingerprint;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Base64;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;

/** One encrypted file in the data folder. Beside it lies a fingerprint of its key, to tell a wrong key from a damaged file. */
record H2Store(Settings settings, KeyFolder keys) implements Store {
    private static final int LOCKED = 90020;
    private static final String USER = "sa";

    private Path folder() {
        return settings.data();
    }

    private Path file() {
        return folder().resolve("foretress.mv.db");
    }

    private Path fingerprint() {
        return folder().resolve("database.fingerprint");
    }

    @Override
    public boolean exists() throws StartRefused {
        if (folder().toString().contains(";")) {
            throw new StartRefused(StartRefused.Reason.FOLDER,
                "The folder %s has a semicolon in its name, which the embedded database reads as the end of it.",
                folder());
        }
        if (settings.get("quarkus.datasource.jdbc.url").filter(url -> !url.startsWith("jdbc:h2:")).isPresent()) {
            throw new StartRefused(StartRefused.Reason.DATABASE_UNREACHABLE,
                "QUARKUS_DATASOURCE_JDBC_URL names another kind of database, but this build is for "
                    + "the embedded one. Build with -Dquarkus.profile=postgres,prod for PostgreSQL.");
        }
        return Files.exists(file());
    }

    private String url() {
        return url(folder());
    }

    private static String url(Path folder) {
        return "jdbc:h2:file:" + folder.resolve("foretress")
            + ";CIPHER=AES;WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;LOCK_TIMEOUT=10000;TRACE_LEVEL_FILE=0";
    }

    /** The file's password, a blank, the user's: both made of the one key. */
    private static String password(byte[] key) {
        Base64.Encoder encoder = Base64.getUrlEncoder().withoutPadding();
        return encoder.encodeToString(KeyFingerprint.derived(key, "database file")) + " "
            + encoder.encodeToString(KeyFingerprint.derived(key, "database user"));
    }

    @Override
    public void tell(Properties properties) throws StartRefused {
        properties.set("quarkus.datasource.jdbc.url", url());
        properties.set("quarkus.datasource.username", USER);
        properties.set("quarkus.datasource.password", password(keys.read(Key.DATABASE)));
    }

    /** To be called once the keys are there and before the file is. */
    void begin() throws IOException, StartRefused {
        OwnerOnly.write(fingerprint(), KeyFingerprint.of(keys.read(Key.DATABASE)) + "\n");
    }

    @Override
    public Connection open() throws StartRefused {
        byte[] key = keys.read(Key.DATABASE);
        checkFingerprint(key);
        try {
            return DriverManager.getConnection(url() + ";IFEXISTS=TRUE", USER, password(key));
        } catch (SQLException e) {
            throw refusal(e);
        }
    }

    private void checkFingerprint(byte[] key) throws StartRefused {
        String known = fingerprintOnFile();
        if (known.isEmpty() || known.equals(KeyFingerprint.of(key))) {
            return;
        }
        throw new StartRefused(StartRefused.Reason.KEY_WRONG,
            "The key %s is not the one the database %s was made with. Put the right key back.",
            keys.folder().resolve(Key.DATABASE.file), file());
    }

    private String fingerprintOnFile() {
        try {
            return Files.readString(fingerprint(), StandardCharsets.US_ASCII).strip();
        } catch (IOException e) {
            return "";
        }
    }

    /** A file that is filled out of the way, where no server finds it half; {@link #settle} puts it in its place. */
    DataSource apart() throws StartRefused {
        var source = new JdbcDataSource();
        source.setURL(url(aside()));
        source.setUser(USER);
        source.setPassword(password(keys.read(Key.DATABASE)));
        return source;
    }

    private Path aside() {
        return folder().resolve("restoring");
    }

    void settle() throws IOException, StartRefused {
        begin();
        Files.move(aside().resolve("foretress.mv.db"), file(), StandardCopyOption.ATOMIC_MOVE);
        OwnerOnly.close(file());
        OwnerOnly.settle(folder());
    }

    /** Takes away what was filled apart, be it of this try or of one that was killed. */
    void clear() throws IOException {
        if (Files.exists(aside())) {
            try (Stream<Path> files = Files.list(aside())) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
            Files.delete(aside());
        }
    }

    private StartRefused refusal(SQLException e) {
        if (e.getErrorCode() == LOCKED) {
            return new StartRefused(StartRefused.Reason.DATABASE_LOCKED,
                "The database %s is in use by another process. Is the server running already?", file());
        }
        if (fingerprintOnFile().isEmpty()) {
            return new StartRefused(StartRefused.Reason.KEY_WRONG,
                "The database %s does not open: its key is another one than %s, or the file is damaged.",
                file(), keys.folder().resolve(Key.DATABASE.file));
        }
        return new StartRefused(StartRefused.Reason.DATABASE_DAMAGED,
            "The database %s is damaged and was left as it is. Move it away and restore the last backup into the empty folder.",
            file());
    }
}
