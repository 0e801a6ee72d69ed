package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Listening;
import foretress.Visitor;
import foretress.running.LoggableFailure;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
@DisplayName("B4, B31: the log tells what happened, never what somebody said or what opens something")
class LogsTest {
    private static final String CANARY = "canary-hives-7731";

    @Inject DataSource store;

    @Test
    void whatIsTypedIsNotLogged() {
        try (var listening = new Listening()) {
            var visitor = new Visitor();
            visitor.get("/sign-in?to=" + CANARY);
            visitor.post("/sign-in", Map.of("login", CANARY, "password", CANARY, "to", CANARY, CANARY, CANARY));
            visitor.post("/language", Map.of("language", CANARY, "to", CANARY));
            visitor.get("/set-up/" + CANARY);
            visitor.post("/set-up/" + CANARY, Map.of("name", CANARY));
            RestAssured.given().contentType("application/x-www-form-urlencoded; charset=UTF-8")
                .body(CANARY + "=%ZZ" + CANARY).post("/sign-in");
            assertThat(listening.everything()).doesNotContain(CANARY);
        }
    }

    @Test
    void aDatabasesComplaintIsLoggedWithoutTheValue() throws SQLException {
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement()) {
            statement.execute("insert into mark (name, said) values ('" + CANARY + "', '')");
            SQLException failure =
                complaint(() -> statement.execute("insert into mark (name, said) values ('" + CANARY + "', '')"));
            statement.execute("delete from mark where name = '" + CANARY + "'");
            assertThat(failure.getMessage()).contains(CANARY);
            assertThat(LoggableFailure.of(new IllegalStateException("kept " + CANARY, failure)))
                .hasMessageNotContaining(CANARY)
                .cause().hasMessageContaining("SQL state 23505").hasMessageNotContaining(CANARY);
            assertThat(LoggableFailure.of(failure).getStackTrace()).isEqualTo(failure.getStackTrace());
        }
    }

    private interface Work {
        void run() throws SQLException;
    }

    private static SQLException complaint(Work work) {
        try {
            work.run();
            throw new AssertionError("the second row went in");
        } catch (SQLException e) {
            return e;
        }
    }

    @Test
    void anyOtherFailureIsToldWhole() {
        var failure = new IllegalStateException("no such zone");
        assertThat(LoggableFailure.of(failure)).isSameAs(failure);
    }

    @Test
    void theAccessLogMasksWhatOpensSomething() {
        Logger log = Logger.getLogger("foretress.access");
        Level before = log.getLevel();
        log.setLevel(Level.FINE);
        try (var listening = new Listening()) {
            RestAssured.get("/i/" + CANARY);
            RestAssured.get("/set-up/" + CANARY);
            RestAssured.get("/sign-in?to=" + CANARY);
            String[] lines = new String[] { "GET /set-up/... 404", "GET /i/...", "GET /sign-in 200" };
            assertThat(listening.until(lines)).contains(lines).doesNotContain(CANARY);
        } finally {
            log.setLevel(before);
        }
    }

    @ParameterizedTest
    @CsvSource({ "/i/abc, /i/...", "/i/abc/birth-date, /i/.../birth-date", "/set-up/abc, /set-up/...", "/desk, /desk",
        "/in, /in",
        "/a%0d%0aforged, /a%0d%0aforged" })
    void onlyTheSecretPartIsMasked(String path, String logged) {
        assertThat(AccessLog.masked(path)).isEqualTo(logged);
    }

    @Test
    void aLineOfTheLogCannotBeForged() {
        assertThat(AccessLog.masked("/x\nERROR forged")).isEqualTo("/x?ERROR?forged");
    }
}
