package foretress.invitation;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.post.Sender;
import foretress.post.SmtpStub;
import foretress.salon.OpenSalon;
import foretress.visit.VisitMaker;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** B2, E4, E5: mails leave over real SMTP, say nothing about health, and leave no token behind. */
@QuarkusTest
@TestProfile(MailTest.OverSmtp.class)
class MailTest {
    private static final SmtpStub SMTP = new SmtpStub();

    public static class OverSmtp implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of("quarkus.mailer.mock", "false", "quarkus.mailer.host", "127.0.0.1",
                "quarkus.mailer.port", "" + SMTP.port(), "quarkus.mailer.start-tls", "DISABLED",
                "quarkus.datasource.jdbc.url", "jdbc:h2:mem:mails;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000");
        }
    }

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Sender sender;
    @Inject DataSource store;
    @Inject MovedClock clock;

    @BeforeEach
    void empty() {
        salon.open();
        sender.sendDue();
        SMTP.refuse(false);
        SMTP.mails().clear();
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private UUID visit(String email) {
        return make.visit(Optional.of(LocalDate.of(1990, 4, 3)), Optional.of(email));
    }

    private Walker mailed(UUID visit) {
        return salon.as("sanna").open("/desk/visits/" + visit).send("form[action$=mail]", Map.of()).expect(200);
    }

    private static String link(String mail) {
        Matcher found = Pattern.compile("/i/([A-Za-z0-9_-]{43})").matcher(unfolded(mail));
        assertThat(found.find()).as(mail).isTrue();
        return found.group();
    }

    /** Quoted-printable (RFC 2045 section 6.7) undone. */
    private static String unfolded(String mail) {
        String joined = mail.replace("=\n", "");
        var out = new ByteArrayOutputStream();
        for (int i = 0; i < joined.length(); i++) {
            if (joined.charAt(i) == '=' && joined.substring(i).matches("(?s)=[0-9A-F]{2}.*")) {
                out.write(Integer.parseInt(joined.substring(i + 1, i + 3), 16));
                i += 2;
            } else {
                out.writeBytes(joined.substring(i, i + 1).getBytes(StandardCharsets.UTF_8));
            }
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void theMailedLinkOpensTheDoor() {
        mailed(visit("ottilie@post.example"));
        assertThat(sender.sendDue()).isOne();
        Walker client = new Walker().open(link(SMTP.mails().get(0))).expect(200)
            .send(Map.of("day", "3", "month", "4", "year", "1990"));
        assertThat(client.cookies()).containsKey("door");
    }

    @Test
    void theMailIsPlainAndHtmlNamesItsLanguageAndSaysAMachineSentIt() {
        mailed(visit("ottilie@post.example"));
        sender.sendDue();
        String mail = SMTP.mails().get(0);
        assertThat(mail).contains("multipart/alternative", "text/plain", "text/html", "Content-Language: en",
            "Auto-Submitted: auto-generated", "Subject: A few questions before your appointment");
        assertThat(mail).containsPattern("Message-ID: <[0-9a-f-]{36}@alderandwren\\.example>");
        assertThat(mail.split("Message-ID:", -1)).hasSize(2);
        assertThat(unfolded(mail)).contains("Alder & Wren", "3 Millrace Lane", "01632 960 114", "14:00");
    }

    @Test
    void noMailSpeaksOfHealthProductOrTest() {
        mailed(visit("ottilie@post.example"));
        sender.sendDue();
        assertThat(unfolded(SMTP.mails().get(0)).toLowerCase()).doesNotContain("allerg", "skin", "test", "patch",
            "colour",
            "dye", "health", "medicine", "henna", "reaction", "highlights", "petra");
    }

    /** B2: after a mail has left, no table holds the token, neither raw nor sealed. */
    @Test
    void afterSendingTheStoreHoldsNoToken() throws SQLException {
        UUID visit = visit("ottilie@post.example");
        mailed(visit);
        assertThat(dump()).doesNotContainPattern("/i/[A-Za-z0-9_-]{43}(?![A-Za-z0-9_+/=-])");
        sender.sendDue();
        String token = link(SMTP.mails().get(0)).substring(3);
        assertThat(dump()).contains(visit.toString(), Token.hash(token)).doesNotContain(token);
        assertThat(bodies()).isEmpty();
    }

    private String dump() throws SQLException {
        var all = new StringBuilder();
        try (Connection connection = store.getConnection();
            ResultSet rows = connection.createStatement().executeQuery("script")) {
            while (rows.next()) {
                all.append(rows.getString(1)).append('\n');
            }
        }
        return all.toString();
    }

    private List<String> bodies() throws SQLException {
        var all = new java.util.ArrayList<String>();
        try (Connection connection = store.getConnection();
            ResultSet rows =
                connection.createStatement().executeQuery("select body from outbox where body is not null")) {
            while (rows.next()) {
                all.add(rows.getString(1));
            }
        }
        return all;
    }

    @Test
    void aSecondTapMailsNothingMore() {
        UUID visit = visit("ottilie@post.example");
        mailed(visit);
        mailed(visit);
        sender.sendDue();
        assertThat(SMTP.mails()).hasSize(1);
        assertThat(sender.sendDue()).isZero();
    }

    @Test
    void aRefusedMailGoesAgainLaterUnderTheSameNameAndOnlyOnce() throws SQLException {
        mailed(visit("ottilie@post.example"));
        SMTP.refuse(true);
        assertThat(sender.sendDue()).isZero();
        assertThat(sender.sendDue()).isZero();
        SMTP.refuse(false);
        assertThat(SMTP.mails()).isEmpty();
        clock.move(Duration.ofMinutes(2));
        assertThat(sender.sendDue()).isOne();
        assertThat(sender.sendDue()).isZero();
        assertThat(SMTP.mails()).hasSize(1);
    }

    @Test
    void aMailRefusedForADayIsGivenUpClearedAndTheDeskIsTold() throws SQLException {
        UUID visit = visit("ottilie@post.example");
        Walker desk = mailed(visit);
        assertThat(desk.text()).contains("waits to leave");
        SMTP.refuse(true);
        for (int i = 0; i < 10; i++) {
            sender.sendDue();
            clock.move(Duration.ofHours(13));
        }
        assertThat(bodies()).isEmpty();
        clock.reset();
        assertThat(salon.as("sanna").open("/desk/visits/" + visit).text()).contains("could not be delivered");
    }

    @Test
    @DisplayName("R8: sending again ends the old link when the new mail has left, not before")
    void theOldLinkHoldsUntilTheNewOneHasLeft() {
        UUID visit = visit("ottilie@post.example");
        mailed(visit);
        sender.sendDue();
        String old = link(SMTP.mails().get(0));
        clock.move(Duration.ofMinutes(5));
        SMTP.refuse(true);
        Walker desk = mailed(visit);
        sender.sendDue();
        new Walker().open(old).expect(200);
        assertThat(desk.open("/desk/visits/" + visit).text()).contains("the link before it still works")
            .doesNotContain("Mailed");
        SMTP.refuse(false);
        clock.move(Duration.ofMinutes(5));
        assertThat(sender.sendDue()).isOne();
        new Walker().open(old).expect(404);
        new Walker().open(link(SMTP.mails().get(1))).expect(200);
        assertThat(desk.open("/desk/visits/" + visit).text()).contains("Mailed");
    }

    @Test
    @DisplayName("R8: of two mails waiting only the newer leaves, so that no dead link arrives after it")
    void anOlderWaitingMailIsCalledBack() {
        UUID visit = visit("ottilie@post.example");
        SMTP.refuse(true);
        mailed(visit);
        sender.sendDue();
        clock.move(Duration.ofMinutes(5));
        mailed(visit);
        SMTP.refuse(false);
        clock.move(Duration.ofMinutes(5));
        sender.sendDue();
        assertThat(SMTP.mails()).hasSize(1);
        new Walker().open(link(SMTP.mails().get(0))).expect(200);
    }

    @Test
    void twoSendersAtOnceSendOneMailOnce() throws Exception {
        for (int i = 0; i < 5; i++) {
            mailed(visit("ottilie" + i + "@post.example"));
        }
        ExecutorService threads = java.util.concurrent.Executors.newFixedThreadPool(4);
        try {
            List<java.util.concurrent.Callable<Integer>> senders =
                List.of(sender::sendDue, sender::sendDue, sender::sendDue, sender::sendDue);
            int sent = 0;
            for (Future<Integer> one : threads.invokeAll(senders)) {
                sent += one.get();
            }
            assertThat(sent).isEqualTo(5);
        } finally {
            threads.shutdown();
        }
        assertThat(SMTP.mails()).hasSize(5);
    }

    @Test
    void aSpanishClientGetsASpanishMail() {
        UUID visit = visit("ottilie@post.example");
        io.quarkus.narayana.jta.QuarkusTransaction.requiringNew()
            .run(() -> foretress.visit.Visit.<foretress.visit.Visit>findById(visit).client.language = "es");
        mailed(visit);
        sender.sendDue();
        assertThat(unfolded(SMTP.mails().get(0))).contains("Content-Language: es", "Abrir sus preguntas",
            "lang=\"es\"");
    }

    /** A second browser sees earlier answers only after the code that was mailed. */
    @Test
    void aMailedCodeOpensASecondBrowser() {
        UUID visit = visit("ottilie@post.example");
        mailed(visit);
        sender.sendDue();
        String link = link(SMTP.mails().get(0));
        make.is(visit, foretress.visit.State.ANSWERING);
        Walker second = new Walker().open(link)
            .send(Map.of("day", "3", "month", "4", "year", "1990"));
        assertThat(second.open("/answers/stop").at()).isEqualTo("/code");
        second.send("form[action=/code/mail]", Map.of()).expect(200);
        sender.sendDue();
        Matcher code = Pattern.compile("Your code is (\\d{4} \\d{4})\\.").matcher(unfolded(SMTP.mails().get(1)));
        assertThat(code.find()).isTrue();
        second.send("form[action=/code]", Map.of("code", "1234 5678")).expect(422);
        assertThat(second.send("form[action=/code]", Map.of("code", code.group(1))).at()).startsWith("/answers");
        assertThat(second.open("/answers/stop").expect(200).at()).isEqualTo("/answers/stop");
    }
}
