package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.start.Launched;
import io.restassured.RestAssured;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("F7, F14: a process killed at any moment has kept every acknowledged page and signature, each once")
class AnsweringKillIT {
    /** Milliseconds after an acknowledgement within which the process dies. */
    private static final int SOON = 40;
    /** Pages of the path; kills fall anywhere on it. */
    private static final int PAGES = 5;

    private final Random random = new Random(20261124);
    private final Map<String, Integer> acknowledged = new HashMap<>();
    @TempDir Path folder;
    private Path jar;
    private Map<String, String> environment;
    private Launched server;
    private String baseBefore;
    private int portBefore;

    @BeforeEach
    void remember() {
        baseBefore = RestAssured.baseURI;
        portBefore = RestAssured.port;
        RestAssured.baseURI = "http://127.0.0.1";
    }

    @AfterEach
    void stop() {
        if (server != null) {
            server.close();
        }
        RestAssured.baseURI = baseBefore;
        RestAssured.port = portBefore;
    }

    @Test
    @DisplayName("F7, F14: on the embedded database: three kills on the path, one within a request, one right after signing")
    void onTheEmbeddedDatabase() throws Exception {
        start(Launched.JAR, Map.of());
        killedOnTheWay(3);
    }

    @Test
    @DisplayName("F7, F14: on PostgreSQL: one kill within a request, one right after signing")
    void onPostgres() throws Exception {
        try (EmbeddedPostgres postgres = EmbeddedPostgres.start()) {
            start(Launched.POSTGRES_JAR,
                Map.of("QUARKUS_DATASOURCE_JDBC_URL", postgres.getJdbcUrl("postgres", "postgres"),
                    "QUARKUS_DATASOURCE_USERNAME", "postgres"));
            killedOnTheWay(0);
            server.close();
        }
    }

    private void start(Path program, Map<String, String> database) throws Exception {
        Assumptions.assumeTrue(program.toFile().exists(),
            "NOT RUN: there is no " + program + "; run mvn pre-integration-test first");
        jar = program;
        environment = new HashMap<>(database);
        environment.putAll(Map.of("FORETRESS_DEMO", "1", "FORETRESS_DOOR_KNOCKS_PER_ADDRESS", "100000"));
        up();
    }

    private void up() throws Exception {
        server = Launched.in(jar, folder, environment).untilReady();
        RestAssured.port = server.port;
    }

    private void killAndRestart() throws Exception {
        Thread.sleep(random.nextInt(SOON));
        server.kill();
        up();
    }

    private void killedOnTheWay(int times) throws Exception {
        Answering client = client("Wanda Kubik").agree();
        killedWithinARequest(client);
        answerAndKill(client, new ArrayList<>(random.ints(0, PAGES).distinct().limit(times).boxed().toList()));
        client.readBack().sign("Wanda Kubik");
        assertThat(client.walker().at()).isEqualTo("/answers/done");
        killAndRestart();
        signedOnce(client.walker());
    }

    /** Somebody of the demo who has not answered yet, through the link printed at the start. */
    private Answering client(String name) {
        Launched.Invited invited = server.invited(name);
        return new Answering(new Walker().open(invited.link()).send(invited.born()), Map.of());
    }

    /** What got no acknowledgement is kept whole or not at all; sent again it is there once. */
    private void killedWithinARequest(Answering client) throws Exception {
        String path = client.walker().at();
        List<Map.Entry<String, String>> fields = new ArrayList<>(client.walker().fields("main form"));
        client.walker().page().select("[data-kind]")
            .forEach(q -> fields.add(Map.entry(q.selectFirst("input").attr("name"), "no")));
        CompletableFuture<Void> sent = CompletableFuture.runAsync(() -> new Tab(client).post(path, fields));
        killAndRestart();
        sent.exceptionally(gone -> null).join();
        client.walker().post(path, fields).expect(200);
        acknowledged.put(path, 1);
        everythingIsThereOnce(client);
    }

    private void answerAndKill(Answering client, List<Integer> kills) throws Exception {
        for (int page = 0; !client.walker().at().equals("/answers/read-back"); page++) {
            acknowledged.merge(client.walker().at(), 1, Integer::sum);
            client.page().walker().expect(200);
            if (kills.remove(Integer.valueOf(page))) {
                killAndRestart();
                everythingIsThereOnce(client);
            }
        }
        assertThat(kills).as("kills left over").isEmpty();
    }

    private void everythingIsThereOnce(Answering client) {
        acknowledged.forEach((path, times) -> {
            Walker page = client.walker().open(path).expect(200);
            assertThat(page.only("input[name=version]").val()).as("times %s was kept", path)
                .isEqualTo(times.toString());
            assertThat(page.page().select("input[checked]")).as("answers on %s", path).isNotEmpty();
        });
        client.walker().open("/answers");
    }

    private static void signedOnce(Walker walker) {
        assertThat(walker.open("/answers").expect(200).at()).isEqualTo("/answers/done");
        assertThat(walker.open("/answers/copy").expect(200).response().contentType()).isEqualTo("application/pdf");
        assertThat(walker.response().header("Content-Disposition")).contains("-v1.pdf");
    }

    /** A second window of the same browser, whose answers do not disturb the first. */
    private static final class Tab extends Walker {
        Tab(Answering client) {
            cookies().putAll(client.walker().cookies());
        }
    }
}
