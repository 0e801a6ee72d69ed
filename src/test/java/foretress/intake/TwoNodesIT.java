package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.running.Held;
import foretress.start.Launched;
import io.restassured.RestAssured;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program built for PostgreSQL, started twice with the same keys on one database: whoever comes finds the same salon behind either door. */
@DisplayName("Two nodes on one PostgreSQL are one salon")
class TwoNodesIT {
    @TempDir static Path folder;
    private static EmbeddedPostgres postgres;
    private static Launched one;
    private static Launched other;
    private static String baseBefore;
    private static int portBefore;

    @BeforeAll
    static void startBoth() throws Exception {
        Assumptions.assumeTrue(Launched.POSTGRES_JAR.toFile().exists(),
            "NOT RUN: there is no " + Launched.POSTGRES_JAR + "; run mvn pre-integration-test first");
        baseBefore = RestAssured.baseURI;
        portBefore = RestAssured.port;
        RestAssured.baseURI = "http://127.0.0.1";
        postgres = EmbeddedPostgres.start();
        one = node();
        other = node();
    }

    private static Launched node() throws Exception {
        return Launched.in(Launched.POSTGRES_JAR, folder,
            Map.of("QUARKUS_DATASOURCE_JDBC_URL", postgres.getJdbcUrl("postgres", "postgres"),
                "QUARKUS_DATASOURCE_USERNAME", "postgres", "FORETRESS_DEMO", "1"))
            .untilReady();
    }

    @AfterAll
    static void stop() throws Exception {
        for (AutoCloseable open : List.of(one, other, postgres)) {
            open.close();
        }
        RestAssured.baseURI = baseBefore;
        RestAssured.port = portBefore;
    }

    private static Walker at(Launched node, Walker walker) {
        RestAssured.port = node.port;
        return walker;
    }

    @Test
    @DisplayName("a client answers now here, now there; one node dies on the way; nothing is lost and nobody comes in again")
    void aNodeDiesInTheMiddleOfAQuestionnaire() throws Exception {
        Walker phone = new Walker();
        Answering client =
            new Answering(enter(one, phone, "Wanda Kubik", Map.of()), Map.of()).agree();
        for (int page = 0; page < 3; page++) {
            at(page % 2 == 0 ? other : one, phone);
            client.page();
        }
        String answered = at(other, phone).at();
        other.kill();
        at(one, phone).open(answered).expect(200);
        client.all();
        other = node();
        at(other, phone);
        client.readBack().sign("Wanda Kubik");
        assertThat(phone.at()).isEqualTo("/answers/done");
        at(one, phone).open("/answers").expect(200);
        assertThat(phone.at()).isEqualTo("/answers/done");
    }

    @Test
    @DisplayName("who signed in at one works at the other, and who signs out there is out here too")
    void staffAreInAndOutAtBoth() {
        Walker desk = signedIn("sanna");
        at(other, desk).open("/desk").expect(200);
        assertThat(desk.at()).isEqualTo("/desk");
        desk.send("form[action$=sign-out]", Map.of());
        at(one, desk).open("/desk");
        assertThat(desk.at()).startsWith("/sign-in");
    }

    @Test
    @DisplayName("B6: wrong birth dates at both are counted together")
    void wrongBirthDatesAreCountedTogether() {
        Walker thief = new Walker();
        for (int year = 1951; year < 1956; year++) {
            enter(year % 2 == 0 ? one : other, thief, "Linh Tran", Map.of("year", "" + year));
        }
        for (Launched node : List.of(one, other)) {
            enter(node, thief, "Linh Tran", Map.of()).expect(423);
        }
    }

    @Test
    @DisplayName("what the owner changes at one stands at the other when nothing is held any longer")
    void aChangeArrives() throws Exception {
        Walker owner = signedIn("edda");
        owner.open("/salon").expect(200).send("#particulars", Map.of("phone", "01632 960 987", "zone", "Etc/UTC"))
            .expect(200);
        assertThat(owner.at()).isEqualTo("/salon?kept");
        assertThat(owner.open("/i/no-such-link").page().text()).contains("960 987");
        Instant latest = Instant.now().plus(Held.LONGEST).plusSeconds(20);
        Walker guest = at(other, new Walker());
        while (!guest.open("/i/no-such-link").page().text().contains("960 987") && Instant.now().isBefore(latest)) {
            Thread.sleep(200);
        }
        assertThat(guest.page().text()).contains("960 987");
    }

    private static Walker signedIn(String login) {
        return at(one, new Walker()).open("/sign-in")
            .send(Map.of("login", login, "password", "comb in the millrace")).expect(200);
    }

    /** Each start prints fresh links, and those of the start before open nothing. */
    private static Walker enter(Launched node, Walker walker, String name, Map<String, String> typed) {
        Launched.Invited invited = other.invited(name);
        Map<String, String> date = new HashMap<>(invited.born());
        date.putAll(typed);
        return at(node, walker).open(invited.link()).send(date);
    }
}
