package foretress.start;

import static org.assertj.core.api.Assertions.assertThat;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

@DisplayName("B29, F19: the program built for PostgreSQL starts, or says why not")
@Execution(ExecutionMode.CONCURRENT)
class PostgresStartIT {
    private static EmbeddedPostgres postgres;

    @TempDir Path folder;

    @BeforeAll
    static void packaged() throws Exception {
        Assumptions.assumeTrue(Files.exists(Launched.POSTGRES_JAR), "NOT RUN: there is no " + Launched.POSTGRES_JAR);
        postgres = EmbeddedPostgres.start();
    }

    @AfterAll
    static void stop() throws Exception {
        if (postgres != null) {
            postgres.close();
        }
    }

    private static Map<String, String> environment() {
        return new HashMap<>(Map.of("QUARKUS_DATASOURCE_JDBC_URL", postgres.getJdbcUrl("postgres", "postgres"),
            "QUARKUS_DATASOURCE_USERNAME", "postgres"));
    }

    private Launched launch(Map<String, String> environment) throws Exception {
        return Launched.in(Launched.POSTGRES_JAR, folder, environment);
    }

    private void refused(Map<String, String> environment, StartRefused.Reason reason, String part) throws Exception {
        try (Launched launched = launch(environment)) {
            assertThat(launched.exitCode()).as("%s %s", launched.out(), launched.err()).isEqualTo(reason.exitCode);
            assertThat(launched.err()).singleElement().asString().contains(part);
        }
    }

    @Test
    void itServesAndKnowsItsKeysAndItsKind() throws Exception {
        try (Launched launched = launch(environment()).untilReady()) {
            assertThat(launched.get("/q/health/ready").statusCode()).isEqualTo(200);
        }
        Map<String, String> demo = environment();
        demo.putAll(Map.of("FORETRESS_DEMO", "1", "FORETRESS_DATA", "data"));
        refused(demo, StartRefused.Reason.DEMO_MIXED, "belongs to a real salon");
        Path key = folder.resolve("data/keys/master.key");
        Files.writeString(key, Base64.getEncoder().encodeToString(new byte[32]));
        refused(environment(), StartRefused.Reason.KEY_WRONG, "not the ones this database was made with");
        Files.delete(key);
        refused(environment(), StartRefused.Reason.KEY_MISSING, "master.key");
    }

    @Test
    void noServerToTalkTo() throws Exception {
        Map<String, String> environment = environment();
        environment.put("QUARKUS_DATASOURCE_JDBC_URL",
            "jdbc:postgresql://127.0.0.1:" + Launched.freePort() + "/postgres");
        refused(environment, StartRefused.Reason.DATABASE_UNREACHABLE, "does not let us in");
    }

    @Test
    void noAddressOfAServer() throws Exception {
        refused(Map.of(), StartRefused.Reason.DATABASE_UNREACHABLE, "QUARKUS_DATASOURCE_JDBC_URL");
    }

    @Test
    void theBuildForTheEmbeddedDatabaseRefusesAServersAddress() throws Exception {
        Assumptions.assumeTrue(Launched.isPackaged());
        try (Launched launched = Launched.in(folder, environment())) {
            assertThat(launched.exitCode()).isEqualTo(StartRefused.Reason.DATABASE_UNREACHABLE.exitCode);
            assertThat(launched.err()).singleElement().asString().contains("-Dquarkus.profile=postgres,prod");
        }
    }
}
