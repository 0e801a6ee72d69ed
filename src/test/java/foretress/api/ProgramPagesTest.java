package foretress.api;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.salon.OpenSalon;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("B26: the owner lets programs in, each for its purpose and for a time")
class ProgramPagesTest {
    @Inject Programs programs;
    @Inject OpenSalon salon;
    @Inject MovedClock clock;
    @Inject DataSource store;

    @BeforeEach
    void open() {
        salon.open();
    }

    @AfterEach
    void putBack() {
        clock.reset();
        QuarkusTransaction.requiringNew().run(() -> ProgramToken.deleteAll());
    }

    /** Everything the database holds, as its dump says it. */
    private String everythingStored() throws SQLException {
        var all = new StringBuilder();
        try (Connection connection = store.getConnection(); Statement statement = connection.createStatement();
            ResultSet rows = statement.executeQuery("script")) {
            while (rows.next()) {
                all.append(rows.getString(1)).append('\n');
            }
        }
        return all.toString();
    }

    @Test
    void aTokenIsShownOnceAndOnlyItsHashIsStored() throws SQLException {
        String token = programs.token(90, "assess");
        assertThat(token).matches("ftr_[A-Za-z0-9_-]{43}");
        assertThat(everythingStored()).contains("program_token".toUpperCase()).doesNotContain(token)
            .doesNotContain(token.substring(4));
        assertThat(salon.as("edda").open("/programs").page().html()).doesNotContain(token);
    }

    @Test
    void noTwoTokensAreAlike() {
        Set<String> tokens = new HashSet<>();
        for (int i = 0; i < 20; i++) {
            tokens.add(programs.token(30, "read"));
        }
        assertThat(tokens).hasSize(20);
    }

    @Test
    void whoMadeAndRevokedATokenIsInTheAuditChain() throws SQLException {
        programs.token(90, "assess");
        Walker edda = salon.as("edda").open("/programs");
        edda.send("form[action$=/revoke]", Map.of()).expect(200);
        assertThat(edda.text()).contains("revoked on");
        assertThat(edda.page().select("form[action$=/revoke]")).isEmpty();
        assertThat(everythingStored()).contains("made a program''s token", "revoked a program''s token");
    }

    @Test
    void whatIsMissingIsSaidAndWhatWasTypedStays() {
        Walker edda =
            salon.as("edda").open("/programs").send("main form.form", Map.of("program-name", "Inkwell")).expect(422);
        assertThat(edda.page().select(".mistakes li")).hasSize(2);
        assertThat(edda.only("[name=program-name]").val()).isEqualTo("Inkwell");
        edda.send("main form.form", Map.of("program-name", "x".repeat(101), "scope", "read", "days", "30")).expect(422);
        assertThat(edda.only("[name=scope][checked]").val()).isEqualTo("read");
    }

    @Test
    void aFormSentTwiceMakesOneToken() {
        Walker edda = salon.as("edda").open("/programs");
        List<Map.Entry<String, String>> fields = new ArrayList<>(edda.fields("main form.form"));
        fields.removeIf(f -> f.getKey().equals("program-name"));
        fields.addAll(List.of(Map.entry("program-name", "Twice"), Map.entry("scope", "read"), Map.entry("days", "30")));
        edda.post("/programs", fields).expect(201);
        edda.post("/programs", fields).expect(422);
        assertThat(QuarkusTransaction.requiringNew().call(() -> ProgramToken.count("name", "Twice"))).isEqualTo(1);
    }

    @Test
    void aPurposeOrATimeThatIsNotOfferedIsRefused() {
        Walker edda = salon.as("edda").open("/programs");
        edda.send("main form.form", Map.of("program-name", "Forger", "scope", "owner", "days", "36500")).expect(422);
        assertThat(edda.page().select(".mistakes li")).hasSize(2);
    }

    @Test
    void theListSaysWhichTokensAreUsedAndWhichAreOver() {
        String token = programs.token(30, "read");
        assertThat(salon.as("edda").open("/programs").text()).contains("never used", "read ingredient lists");
        Programs.with(token).body("{\"text\":\"Aqua\"}").post("/api/v1/read-label");
        assertThat(salon.as("edda").open("/programs").text()).contains("last used on").doesNotContain("never used");
        clock.move(Duration.ofDays(31));
        assertThat(salon.as("edda").open("/programs").text()).contains("expired on");
    }

    @Test
    void nobodyButTheOwnerComesHere() {
        for (String login : List.of("petra", "sanna")) {
            salon.as(login).open("/programs").expect(403);
            salon.as(login).open("/programs/openapi").expect(403);
        }
    }
}
