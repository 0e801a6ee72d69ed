package foretress;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** The same application on a real PostgreSQL server: {@code @TestProfile(Postgres.class)}. */
public class Postgres implements QuarkusTestProfile {
    @Override
    public String getConfigProfile() {
        return "postgres,test";
    }

    @Override
    public List<TestResourceEntry> testResources() {
        return List.of(new TestResourceEntry(Server.class));
    }

    /** Fresh and empty, on a free port of this machine, gone afterwards. */
    public static class Server implements QuarkusTestResourceLifecycleManager {
        private EmbeddedPostgres server;

        @Override
        public Map<String, String> start() {
            try {
                server = EmbeddedPostgres.start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return Map.of("quarkus.datasource.jdbc.url", server.getJdbcUrl("postgres", "postgres"),
                "quarkus.datasource.username", "postgres");
        }

        @Override
        public void stop() {
            try {
                if (server != null) {
                    server.close();
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
