package foretress.start;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.SalonOwner;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@DisplayName("F9, F10: by commands alone a running salon is backed up, restored and moved, and its owner signs in")
@Execution(ExecutionMode.CONCURRENT)
class BackupIT {
    @TempDir Path folder;

    private Launched command(Map<String, String> environment, int status, String... words) throws Exception {
        Launched launched = Launched.command(folder, environment, words);
        assertThat(launched.exitCode()).as("%s %s", launched.out(), launched.err()).isEqualTo(status);
        return launched;
    }

    @Test
    void aSalonComesBackFromItsBackup() throws Exception {
        Assumptions.assumeTrue(Launched.isPackaged(), "NOT RUN: there is no " + Launched.JAR);
        try (Launched server = Launched.in(folder, Map.of()).untilReady()) {
            new SalonOwner(server).setUp(server.said("/set-up").orElseThrow().replaceAll(".*(/set-up\\S*).*", "$1"));
            assertThat(command(Map.of(), 0, "backup").said("read back to its end")).isPresent();
        }
        Path backup;
        try (Stream<Path> files = Files.list(folder.resolve("data/backups"))) {
            backup = files.max(Path::compareTo).orElseThrow();
        }
        Map<String, String> elsewhere = new HashMap<>(Map.of("FORETRESS_DATA", "new"));
        assertThat(command(elsewhere, StartRefused.Reason.KEY_MISSING.exitCode, "restore", backup.toString()).err())
            .singleElement().asString().contains("master.key, ledger.key, backup.key");
        Files.createDirectories(folder.resolve("kept"));
        for (String key : new String[] { "master.key", "ledger.key", "backup.key" }) {
            Files.copy(folder.resolve("data/keys").resolve(key), folder.resolve("kept").resolve(key));
        }
        elsewhere.put("FORETRESS_KEYS", "kept");
        assertThat(command(elsewhere, 0, "restore", "--old", "data", backup.toString())
            .said("acts happened after the backup and are not in this store")).isPresent();
        command(elsewhere, 2, "restore", backup.toString());
        try (Launched server = Launched.in(folder, elsewhere).untilReady()) {
            new SalonOwner(server).signIn();
            assertThat(server.said("was restored from a backup")).isPresent();
        }
        move(elsewhere);
    }

    @Test
    @DisplayName("D16: a new master key is taken into use while the server works; then it opens everything alone")
    void theMasterKeyIsChangedWhileTheServerWorks() throws Exception {
        Assumptions.assumeTrue(Launched.isPackaged(), "NOT RUN: there is no " + Launched.JAR);
        Map<String, String> demo = Map.of("FORETRESS_DEMO", "1", "FORETRESS_MASTER_KEY_EVERY", "1s");
        Path keys = folder.resolve("demo-data/keys");
        String before;
        try (Launched server = Launched.in(folder, demo).untilReady()) {
            before = Files.readString(keys.resolve("master.key")).strip();
            command(demo, 0, "new-master-key");
            assertThat(server.untilSaid("were wrapped by the new master key")).endsWith("; 0 could not be opened");
            assertThat(command(demo, StartRefused.Reason.DATABASE_LOCKED.exitCode, "new-master-key", "--drop").err())
                .isNotEmpty();
        }
        assertThat(Files.readString(keys.resolve("master.key"))).hasLineCount(2).contains(before);
        command(demo, 0, "new-master-key", "--drop");
        assertThat(Files.readString(keys.resolve("master.key"))).hasLineCount(1).doesNotContain(before);
        command(demo, 0, "backup");
        Path backup;
        try (Stream<Path> files = Files.list(folder.resolve("demo-data/backups"))) {
            backup = files.max(Path::compareTo).orElseThrow();
        }
        Map<String, String> elsewhere =
            Map.of("FORETRESS_DEMO", "1", "FORETRESS_DATA", "new", "FORETRESS_KEYS", keys.toString());
        assertThat(command(elsewhere, 0, "restore", backup.toString()).said("signed papers opened: ").orElseThrow())
            .doesNotEndWith(" 0");
        Files.writeString(keys.resolve("master.key"), before);
        assertThat(
            command(Map.of("FORETRESS_DEMO", "1", "FORETRESS_DATA", "newer", "FORETRESS_KEYS", keys.toString()), 2,
                "restore", backup.toString()).err())
            .singleElement().asString().contains("put its master.key");
    }

    private void move(Map<String, String> environment) throws Exception {
        Assumptions.assumeTrue(Files.exists(Launched.POSTGRES_JAR), "NOT RUN: there is no " + Launched.POSTGRES_JAR);
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            Map<String, String> there = new HashMap<>(environment);
            there.putAll(Map.of("QUARKUS_DATASOURCE_JDBC_URL", postgres.getJdbcUrl("postgres", "postgres"),
                "QUARKUS_DATASOURCE_USERNAME", "postgres"));
            command(there, 0, "move-to-postgres");
            try (Launched server = Launched.in(Launched.POSTGRES_JAR, folder, there).untilReady()) {
                new SalonOwner(server).signIn();
            }
        }
    }
}
