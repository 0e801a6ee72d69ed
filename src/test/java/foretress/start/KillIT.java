package foretress.start;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.SalonOwner;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * Several people save at once, the process is killed without a farewell, and is started again: what a page had acknowledged is there,
 * once, with its entry in the audit chain. {@code -Dkills=50} for a longer look; three rounds say little about rare losses.
 */
@DisplayName("F1: what was acknowledged outlives a killed process")
@Execution(ExecutionMode.CONCURRENT)
class KillIT {
    private static final int ROUNDS = Integer.getInteger("kills", 3);
    private static final int HANDS = 2;

    @TempDir Path folder;
    private final Queue<String> acknowledged = new ConcurrentLinkedQueue<>();
    private final Random random = new Random(20261124);

    @Test
    void onTheEmbeddedDatabase() throws Exception {
        storm(Launched.JAR, Map.of());
        try (Connection connection = h2()) {
            assertThatTheChainAgrees(connection);
        }
    }

    private Connection h2() throws StartRefused {
        var settings = new Settings(Map.of("foretress.data", folder.resolve("data").toString())::get);
        return new H2Store(settings, new KeyFolder(settings.keys())).open();
    }

    @Test
    void onPostgres() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            storm(Launched.POSTGRES_JAR,
                Map.of("QUARKUS_DATASOURCE_JDBC_URL", postgres.getJdbcUrl("postgres", "postgres"),
                    "QUARKUS_DATASOURCE_USERNAME", "postgres"));
            try (Connection connection = postgres.getPostgresDatabase().getConnection()) {
                assertThatTheChainAgrees(connection);
            }
        }
    }

    private void storm(Path jar, Map<String, String> environment) throws Exception {
        Assumptions.assumeTrue(jar.toFile().exists(),
            "NOT RUN: there is no " + jar + "; run mvn pre-integration-test first");
        try (Launched server = Launched.in(jar, folder, environment).untilReady()) {
            new SalonOwner(server).setUp(server.said("/set-up/").orElseThrow().replaceAll(".*(/set-up/\\S+)$", "$1"));
            saveUntilKilled(server, 0);
        }
        for (int round = 1; round < ROUNDS; round++) {
            try (Launched server = Launched.in(jar, folder, environment).untilReady()) {
                saveUntilKilled(server, round);
            }
        }
        try (Launched server = Launched.in(jar, folder, environment).untilReady()) {
            assertThatAllIsThere(server);
        }
    }

    private void saveUntilKilled(Launched server, int round) throws Exception {
        int before = acknowledged.size();
        var hands = new ArrayList<Thread>();
        for (int hand = 0; hand < HANDS; hand++) {
            hands.add(saving(server, "juno-" + round + "-" + hand));
        }
        while (acknowledged.size() < before + HANDS && hands.stream().anyMatch(Thread::isAlive)) {
            Thread.sleep(5);
        }
        Thread.sleep(random.nextInt(1000));
        server.kill();
        for (Thread hand : hands) {
            hand.join();
        }
        assertThat(acknowledged).as("saved in round " + round).hasSizeGreaterThan(before);
    }

    private Thread saving(Launched server, String name) {
        var thread = new Thread(() -> {
            try {
                var owner = new SalonOwner(server);
                owner.signIn();
                for (int i = 0;; i++) {
                    owner.takeOn(name + "-" + i);
                    acknowledged.add(name + "-" + i);
                }
            } catch (IOException killed) {
                // the answer that did not come was no acknowledgement
            }
        });
        thread.start();
        return thread;
    }

    private void assertThatAllIsThere(Launched server) throws IOException {
        var owner = new SalonOwner(server);
        owner.signIn();
        List<String> stored = owner.logins();
        assertThat(stored).containsAll(acknowledged).doesNotHaveDuplicates();
        assertThat(stored.size()).as("unacknowledged ones that were kept: one a hand and round at most")
            .isLessThanOrEqualTo(acknowledged.size() + 1 + HANDS * ROUNDS);
    }

    private static void assertThatTheChainAgrees(Connection connection) throws SQLException {
        assertThat(count(connection, "select count(*) from ledger_entry where what = 'took on'"))
            .isEqualTo(count(connection, "select count(*) from staff where role = 'DESK'"));
        assertThat(count(connection, "select count(*) from ledger_entry"))
            .isEqualTo(count(connection, "select max(number) from ledger_entry"))
            .isEqualTo(count(connection, "select number from ledger_head"));
    }

    private static long count(Connection connection, String query) throws SQLException {
        try (Statement statement = connection.createStatement(); ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getLong(1);
        }
    }
}
