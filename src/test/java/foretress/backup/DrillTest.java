package foretress.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.demo.EveryPageTest;
import foretress.ledger.Ledger;
import foretress.ledger.TrailProof;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@QuarkusTest
@TestProfile(EveryPageTest.TheDemo.class)
@DisplayName("F9, F10: a salon is backed up while it works, and restored whole into an empty place")
class DrillTest {
    private static final BackupKey KEY = key(1), OTHER = key(2);
    private static final Instant NOW = Instant.parse("2026-12-01T03:00:00Z");
    private static final String PAPERS = "select id, pdf from signed_consent order by signed_at, id";

    @Inject DataSource store;
    @Inject Ledger ledger;
    @ConfigProperty(name = "foretress.master-key") String masterKey;
    @TempDir Path folder;

    private static BackupKey key(int seed) {
        byte[] bytes = new byte[32];
        new Random(seed).nextBytes(bytes);
        return new BackupKey(Base64.getEncoder().encodeToString(bytes));
    }

    private static DataSource emptyH2() {
        var empty = new JdbcDataSource();
        empty.setURL("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        empty.setUser("sa");
        return empty;
    }

    private Path backup() throws Exception {
        Path file = folder.resolve("one.backup");
        try (Connection connection = store.getConnection()) {
            BackupFile.write(file, KEY, connection, NOW.toEpochMilli());
        }
        return file;
    }

    private Restore into(DataSource empty) {
        return new Restore(empty, new Restore.Keys(masterKey, List.of("right")), NOW);
    }

    private static List<List<String>> rows(DataSource store, String sql) throws SQLException {
        List<List<String>> all = new ArrayList<>();
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement();
            ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                List<String> row = new ArrayList<>();
                for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                    row.add(rows.getString(i));
                }
                all.add(row);
            }
        }
        return all;
    }

    private static String one(DataSource store, String sql) throws SQLException {
        return rows(store, sql).get(0).get(0);
    }

    @Test
    void whatWasWrittenUnderLoadComesBackWholeWithItsChain() throws Exception {
        var over = new AtomicBoolean();
        var writer = new Thread(() -> {
            while (!over.get()) {
                ledger.note("server", "audit chain checked", UUID.randomUUID().toString());
            }
        });
        writer.start();
        Path file;
        try {
            file = backup();
        } finally {
            over.set(true);
            writer.join();
        }
        DataSource empty = emptyH2();
        Restore.Restored restored = into(empty).from(file, KEY);
        assertThat(rows(empty, PAPERS)).isNotEmpty().isEqualTo(rows(store, PAPERS));
        assertThat(restored.sound()).isTrue();
        assertThat(restored.papers().opened()).isEqualTo(rows(store, PAPERS).size());
        assertThat(restored.chain().whole()).isEqualTo(Long.parseLong(one(empty, "select number from ledger_head")))
            .isPositive().isLessThanOrEqualTo(ledger.check(List.of()).whole());
        assertThat(rows(empty, "select login, password_hash from staff order by login"))
            .isEqualTo(rows(store, "select login, password_hash from staff order by login"));
    }

    @Test
    void everyLinkSessionAndWaitingMailOfTheBackupIsClosed() throws Exception {
        assertThat(one(store, "select count(*) from invitation where revoked_at is null")).isNotEqualTo("0");
        DataSource empty = emptyH2();
        Restore.Restored restored = into(empty).from(backup(), KEY);
        assertThat(restored.severed().links()).isPositive();
        for (String open : List.of("invitation where revoked_at is null and expires_at > '2026-12-01T03:00:00Z'",
            "aftercare_link where expires_at > '2026-12-01T03:00:00Z'", "door where closed_at is null", "staff_session",
            "door_code where expires_at > '2026-12-01T03:00:00Z'",
            "set_up_code", "outbox where sent_at is null and given_up_at is null")) {
            assertThat(one(empty, "select count(*) from " + open)).as(open).isEqualTo("0");
        }
    }

    @Test
    void aSalonMovesToPostgresAndItsBackupComesBackToTheEmbeddedDatabase() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            DataSource moved = postgres.getPostgresDatabase();
            try (Connection old = store.getConnection()) {
                Restore.Restored came = into(moved).move(old, folder);
                assertThat(came.papers().opened()).isPositive();
            }
            assertThat(rows(moved, PAPERS)).isEqualTo(rows(store, PAPERS));
            assertThat(one(moved, "select count(*) from invitation where revoked_at is null"))
                .isEqualTo(one(store, "select count(*) from invitation where revoked_at is null"));
            Path file = folder.resolve("two.backup");
            StoreCount there;
            try (Connection connection = moved.getConnection()) {
                there = BackupFile.write(file, KEY, connection, NOW.toEpochMilli());
            }
            DataSource back = emptyH2();
            assertThat(into(back).from(file, KEY).counted()).isEqualTo(there);
            assertThat(rows(back, PAPERS)).isEqualTo(rows(store, PAPERS));
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactly("two.backup");
        }
    }

    @Test
    void aBackupOfAnOlderProgramIsRestoredAndBroughtToToday() throws Exception {
        DataSource old = emptyH2();
        new Schema(old, masterKey).make("20261129.2215");
        try (Connection connection = old.getConnection(); Statement statement = connection.createStatement()) {
            statement.executeUpdate("insert into client (id, given_name, family_name, search, birth_date_confirmed, "
                + "language, created_at, version) values ('" + new UUID(1, 2)
                + "', 'Ottilie', 'Brandt', '', false, 'en', '2026-01-01T00:00:00Z', 0)");
        }
        Path file = folder.resolve("old.backup");
        try (Connection connection = old.getConnection()) {
            assertThat(BackupFile.write(file, KEY, connection, 0).version()).isEqualTo("20261129.2215");
        }
        DataSource empty = emptyH2();
        into(empty).from(file, KEY);
        assertThat(one(empty, "select given_name from client")).isEqualTo("Ottilie");
        try (Connection now = empty.getConnection(); Connection today = store.getConnection()) {
            assertThat(Schema.version(now)).isEqualTo(Schema.version(today));
            assertThat(TrailProof.ofStore(now, List.of()).firstBroken()).isEmpty();
        }
    }

    @Test
    void aPlaceThatIsNotEmptyIsLeftAlone() throws Exception {
        DataSource taken = emptyH2();
        try (Connection connection = taken.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("create table recipes (id integer primary key)");
        }
        Path file = backup();
        assertThatThrownBy(() -> into(taken).from(file, KEY)).isInstanceOf(IOException.class)
            .hasMessageContaining("not empty");
        assertThat(rows(taken, "select table_name from information_schema.tables where table_schema = 'PUBLIC'"))
            .containsExactly(List.of("RECIPES"));
    }

    @Test
    void keysOfAnotherSalonAreToldAtOnceAndThePlaceIsEmptyAgain() throws Exception {
        DataSource old = emptyH2();
        new Schema(old, masterKey).make("20261130.2300");
        try (Connection connection = old.getConnection()) {
            Marks.put(connection, "keys", "others");
            BackupFile.write(folder.resolve("others.backup"), KEY, connection, 0);
        }
        DataSource empty = emptyH2();
        assertThatThrownBy(() -> into(empty).from(folder.resolve("others.backup"), KEY))
            .hasMessageContaining("not the ones this salon was made with");
        assertThat(rows(empty, "select table_name from information_schema.tables where table_schema = 'PUBLIC'"))
            .isEmpty();
    }

    @Test
    void aPaperChangedOutsideTheProgramIsNamed() throws Exception {
        DataSource empty = emptyH2();
        into(empty).from(backup(), KEY);
        String id = rows(empty, PAPERS).get(0).get(0);
        try (Connection connection = empty.getConnection(); Statement statement = connection.createStatement()) {
            statement.executeUpdate("update signed_consent set pdf = body where id = '" + id + "'");
            assertThat(Papers.check(connection, masterKey).altered()).containsExactly(UUID.fromString(id));
        }
    }

    @Test
    void anotherKeyOrAChangedOrShortenedFileDoesNotOpen() throws Exception {
        Path file = backup();
        byte[] whole = Files.readAllBytes(file);
        assertThatThrownBy(() -> BackupFile.verify(file, OTHER)).hasMessageContaining("was closed with the backup key");
        for (int at = 0; at < whole.length; at += whole.length / 40) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(file, changed);
            assertThatThrownBy(() -> BackupFile.verify(file, KEY)).as("byte %d", at).isInstanceOf(IOException.class);
        }
        for (int length : new int[] { 0, 10, 60, whole.length / 2, whole.length - 1 }) {
            Files.write(file, java.util.Arrays.copyOf(whole, length));
            assertThatThrownBy(() -> BackupFile.verify(file, KEY)).as("%d bytes", length)
                .isInstanceOf(IOException.class);
        }
    }

    @Test
    void nobodyElseMayReadItAndNoNameStandsInIt() throws Exception {
        Path file = backup();
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-------");
        String bytes = Files.readString(file, java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(rows(store, "select family_name from client").stream().map(row -> row.get(0))).isNotEmpty()
            .noneMatch(bytes::contains);
    }

    @Test
    void theOldestGoAndWhatElseLiesThereStays() throws Exception {
        var shelf = new BackupShelf(folder, 2);
        for (int day = 0; day < 4; day++) {
            Files.writeString(shelf.place(NOW.plusSeconds(86_400L * day)), "");
        }
        Files.writeString(folder.resolve("letter.txt"), "");
        shelf.prune();
        assertThat(shelf.all()).containsExactly(shelf.place(NOW.plusSeconds(86_400L * 3)),
            shelf.place(NOW.plusSeconds(86_400L * 2)));
        assertThat(shelf.newest()).contains(NOW.plusSeconds(86_400L * 3));
        assertThat(folder.resolve("letter.txt")).exists();
    }
}
