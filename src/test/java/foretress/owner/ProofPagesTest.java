package foretress.owner;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.ledger.Ledger;
import foretress.ledger.Slip;
import foretress.post.Sender;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@DisplayName("D14, D15, C13: the owner keeps slips of the trail, checks old ones, searches and saves it, and lists what was touched")
class ProofPagesTest {
    private static final String HOUSE = "hello@alderandwren.example";

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Ledger ledger;
    @Inject DailyAnchor daily;
    @Inject DataSource store;
    @Inject Sender sender;
    @Inject MockMailbox mails;
    @Inject Clock clock;

    @BeforeEach
    void open() throws SQLException {
        salon.open();
        sql("delete from ledger_anchor");
        while (sender.sendDue() > 0) {
            mails.clear();
        }
        mails.clear();
    }

    private void sql(String statement) throws SQLException {
        try (Connection connection = store.getConnection(); Statement s = connection.createStatement()) {
            s.execute(statement);
        }
    }

    /** The file, once the password was given. */
    private Response got(Walker owner, String path) {
        return owner.open(path).send("main form", Map.of("password", OpenSalon.PASSWORD)).response();
    }

    @ParameterizedTest
    @ValueSource(
        strings = { "/owner/trail.csv", "/owner/trail.json", "/owner/breach.csv?from=2026-01-01&until=2026-01-02" })
    @DisplayName("B15: no file of the trail leaves the house for somebody who only sits at the owner's screen")
    void noFileWithoutThePassword(String path) {
        Walker owner = salon.as("edda");
        assertThat(owner.open(path).expect(200).page().select("input[type=password]")).hasSize(1);
        owner.send("main form", Map.of("password", "not the password at all")).expect(422);
        assertThat(owner.response().header("Content-Disposition")).isNull();
        assertThat(owner.text()).contains("That is not your password. Nothing was saved.");
        assertThat(owner.page().selectFirst("main form").attr("action")).isEqualTo(path);
    }

    @Test
    @DisplayName("a slip made, printed and typed again says up to where the trail is unbroken; then which entry was touched; a mistyped one says so")
    void aSlipMadePrintedAndChecked() throws SQLException {
        Walker owner = salon.as("edda");
        owner.open("/owner/proof").send("form[action='/owner/proof']", Map.of()).expect(200);
        String slip = owner.only("pre").wholeText();
        long last = Slip.read(slip).slips().get(0).last();
        owner.open("/owner/proof").send("form[action$=check]", Map.of("slip", slip)).expect(200);
        assertThat(owner.only("p.notice[role=status]").text()).startsWith("Unbroken up to entry " + last + ".")
            .contains("unproven");
        owner.open("/owner/proof").send("form[action$=check]", Map.of("slip", slip.replaceFirst("Day 2", "Day 3")));
        assertThat(owner.only("#slip-mistake").text()).contains("one letter of it is wrong");
        assertThat(owner.only("#slip").wholeText()).contains("Day 3");
        sql("update ledger_entry set what = concat(what, '!') where number = " + last);
        try {
            owner.open("/owner/proof").send("form[action$=check]", Map.of("slip", slip)).expect(200);
            assertThat(owner.only("p.notice[role=alert]").text()).contains("entry " + last + " is missing");
        } finally {
            sql("update ledger_entry set what = substring(what, 1, length(what) - 1) where number = " + last);
        }
    }

    @Test
    @DisplayName("once a day a slip is made and mailed to the salon's own address, naming nobody; none when it was made already")
    void theDailySlip() {
        make.visit(LocalDate.of(1990, 5, 17));
        ledger.note("staff", "visit opened", "visit");
        Slip slip = daily.makeDue().orElseThrow();
        ledger.note("staff", "visit opened", "visit");
        assertThat(daily.makeDue()).isEmpty();
        assertThat(sender.sendDue()).isOne();
        assertThat(mails.getMailsSentTo(HOUSE)).hasSize(1);
        Mail mail = mails.getMailsSentTo(HOUSE).get(0);
        assertThat(mail.getSubject()).isEqualTo("Slip of the audit trail");
        assertThat(Slip.read(mail.getText())).isEqualTo(new Slip.Typed(List.of(slip), false));
        assertThat(mail.getText()).contains("/owner/proof").doesNotContain("staff", "visit opened");
    }

    @Test
    @DisplayName("D15: what a chain does not prove stands on the page, in both languages of the staff")
    void theLimitsStandThere() {
        Walker owner = salon.as("edda");
        assertThat(owner.open("/owner/proof").text()).contains("does not prove that an entry was true",
            "without the program", "two people two chains", "not proven yet");
        assertThat(owner.with("language", "es").open("/owner/proof").text()).isNotBlank();
    }

    @Test
    @DisplayName("the trail is saved as JSON with its seals and as a table with names; a search is saved as it was searched")
    void itIsSaved() {
        Walker owner = salon.as("edda");
        UUID visit = make.visit(LocalDate.of(1990, 5, 17));
        owner.open("/visits/" + visit);
        String table = got(owner, "/owner/trail.csv?about=" + visit).asString();
        assertThat(table).startsWith("When,Who,What,About,No.\r\n").contains("Edda Wren,consultation read,");
        assertThat(got(owner, "/owner/trail.csv?about=" + UUID.randomUUID()).asString().lines()).hasSize(1);
        assertThat(got(owner, "/owner/trail.json").asString())
            .startsWith("{\"format\":\"foretress-trail-1\",\"whole\":true")
            .doesNotContain("Edda");
        Response part = got(owner, "/owner/trail.json?person=client");
        assertThat(part.asString()).contains("\"whole\":false");
        assertThat(part.header("Content-Disposition")).contains("trail.json");
    }

    @Test
    @DisplayName("a search by client, act, day and minute; a line leads to all of its client's lines")
    void itIsSearched() {
        Walker owner = salon.as("edda");
        UUID visit = make.visit(LocalDate.of(1990, 5, 17));
        owner.open("/visits/" + visit);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.of("Europe/London"));
        owner.open("/owner?about=" + visit + "&from=" + today.minusDays(1) + "&until=" + today.plusDays(1));
        assertThat(owner.page().select("#trail tbody tr").eachText()).isNotEmpty().allMatch(row -> !row.isBlank())
            .anyMatch(row -> row.contains("consultation read"));
        owner.open(owner.page().select("#trail tbody a").attr("href")).expect(200);
        assertThat(owner.page().select("#trail tbody tr")).isNotEmpty();
        owner.open("/owner?about=" + visit + "&from=" + today.plusDays(2));
        assertThat(owner.page().select("#trail tbody tr")).isEmpty();
        owner.open("/owner?about=" + visit + "&from=" + today.minusDays(1) + "&until=" + today.minusDays(1)
            + "&before=00:00").expect(200);
        assertThat(owner.page().select("#trail tbody tr")).isEmpty();
        owner.open("/owner?about=nobody&from=yesterday&after=noon&page=x").expect(200);
        assertThat(owner.page().select("#trail tbody tr")).isEmpty();
    }

    @Test
    @DisplayName("C13: between two moments it says who touched how many records of how many clients; exactly the planted ones")
    void whatWasTouched() throws SQLException {
        Walker owner = salon.as("edda");
        assertThat(owner.open("/owner/breach").text()).contains("Give both days");
        UUID one = make.visit(LocalDate.of(1990, 5, 17)), other = make.visit(LocalDate.of(1991, 6, 18));
        ledger.note("intruder", "consultation read", one.toString());
        ledger.note("intruder", "consent read", one.toString());
        ledger.note("intruder", "consultation read", other.toString());
        sql("update ledger_entry set noted_at = timestamp '2019-03-01 12:00:00' where actor = 'intruder'");
        try {
            owner.open("/owner/breach?from=2019-03-01&after=11:59&until=2019-03-01&before=12:00").expect(200);
            assertThat(owner.page().select("tbody").get(0).text()).isEqualTo("intruder 2 2 3");
            assertThat(owner.page().select("tbody").get(1).select("tr")).hasSize(2);
            assertThat(got(owner, "/owner/breach.csv?from=2019-03-01&until=2019-03-01").asString().lines()).hasSize(3)
                .allMatch(line -> line.startsWith("Who,") || line.startsWith("intruder,"));
            assertThat(owner.open("/owner/breach?from=2019-03-02&until=2019-03-03").text())
                .contains("Nothing was touched");
        } finally {
            sql("delete from ledger_anchor");
            sql("delete from ledger_entry");
            sql("update ledger_head set number = 0, sha256 = '" + "0".repeat(64) + "'");
        }
    }

    @Test
    @DisplayName("a cell that a spreadsheet would take for a formula is guarded")
    void formulasAreGuarded() {
        assertThat(CsvLine.of(List.of("=1+1", "+44", "-", "@x", "a,b", "say \"no\"", "plain")))
            .isEqualTo("\"'=1+1\",\"'+44\",\"'-\",\"'@x\",\"a,b\",\"say \"\"no\"\"\",plain\r\n");
    }
}
