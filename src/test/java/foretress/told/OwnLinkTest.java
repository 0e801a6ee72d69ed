package foretress.told;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.salon.OpenSalon;
import foretress.skintest.Chair;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a client says by her own link once she has signed, through the real pages: a reaction, a complaint; and what staff read. */
@QuarkusTest
class OwnLinkTest {
    private static final Map<String, String> BORN = Map.of("day", "4", "month", "3", "year", "1965");

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Chair chair;
    @Inject MovedClock clock;
    UUID visit;

    @BeforeEach
    void aClientIsInvited() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
    }

    @AfterEach
    void backToNow() {
        clock.reset();
    }

    private Walker signed() {
        return knocking.come(visit, Map.of()).agree().all().readBack().sign("Ottilie Brandt").walker();
    }

    private void close(UUID visit) {
        make.is(visit, State.DECIDED);
        make.is(visit, State.CLOSED);
    }

    private long rows(String query) {
        return QuarkusTransaction.requiringNew().call(() -> ((Number) Visit.getEntityManager().createNativeQuery(query)
            .setParameter("visit", visit).getSingleResult()).longValue());
    }

    /** Addresses of this visit's complaints, the first one first. */
    private List<String> complaints() {
        return QuarkusTransaction.requiringNew().call(() -> ComplaintMade.ofVisit(visit).stream()
            .sorted(Comparator.comparing(ComplaintMade::madeAt)).map(made -> "/complaints/" + made.id()).toList());
    }

    /** The page's fields, without the words. */
    private static List<Map.Entry<String, String>> nothingWritten(Walker phone) {
        return phone.fields("main form").stream().filter(field -> !field.getKey().equals("words")).toList();
    }

    private static Walker tells(Walker phone, Map<String, String> what) {
        phone.open("/answers/reaction").expect(200);
        assertThat(phone.text()).as("help comes before any form").contains("Call 999 at once if");
        assertThat(phone.page().select("main input:not([type=hidden])")).isEmpty();
        return phone.open(phone.only("a.main").attr("href")).expect(200).send(what);
    }

    @Test
    @DisplayName("a reaction is told by her own link before the service: kept once, the visit stopped, somebody speaks to her, and it weighs at once")
    void aReactionStopsTheVisit() {
        Walker phone = signed();
        assertThat(phone.page().select("a[href=/answers/reaction]")).as("on the page after signing").hasSize(1);
        make.is(visit, State.DECIDED);
        assertThat(tells(phone, Map.of()).expect(422).text()).contains("Tick what happened.", "Say when it began.");
        List<Map.Entry<String, String>> form = new ArrayList<>(nothingWritten(phone));
        form.addAll(List.of(Map.entry("felt", "swelling"), Map.entry("began", "two-days"), Map.entry("where", "face"),
            Map.entry("words", "Both eyelids since noon.")));
        phone.post("/answers/reaction/tell", form).expect(200);
        phone.post("/answers/reaction/tell", form).expect(200);
        assertThat(phone.at()).isEqualTo("/answers/reaction/told");
        assertThat(phone.text()).contains("This is urgent", "Call 999", "Petra Lind will speak to you",
            "Your appointment is stopped");
        assertThat(rows("select count(*) from told_reaction where visit_id = :visit")).isOne();
        assertThat(rows("select count(*) from told_reaction where visit_id = :visit and body like '%eyelid%'"))
            .isZero();
        assertThat(QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).state))
            .isEqualTo(State.SIGNED);
        Walker petra = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(petra.text()).contains("The client told of a reaction on", "swelled up");
        assertThat(petra.only("h1").text()).startsWith("Prevents");
        assertThat(petra.open("/day").text()).contains("speak to the client at once");
        assertThat(petra.open("/visits/" + visit + "/told").expect(200).text()).contains("Both eyelids since noon.",
            "Where: face or eyes");
        assertThat(petra.page().select("main form")).as("a stylist strikes nothing out").isEmpty();
        assertThat(salon.as("sanna").open("/desk").text()).contains("speaks to the client at once")
            .doesNotContain("eyelids");
        salon.as("sanna").open("/visits/" + visit + "/told").expect(403);
    }

    @Test
    @DisplayName("told of a service that took place, it is a reaction for the next visit, until the owner proves and says that it is none")
    void aReactionAfterTheServiceWeighsNextTime() {
        Walker phone = signed();
        close(visit);
        clock.move(Duration.ofDays(8));
        assertThat(phone.open("/answers").expect(200).at()).isEqualTo("/answers/after");
        tells(phone, Map.of("felt", "itch-after", "began", "unknown")).expect(200);
        assertThat(phone.text()).contains("Thank you for telling us").doesNotContain("Your appointment is stopped");
        UUID first = visit;
        visit = make.again(visit);
        signed();
        Walker edda = salon.as("edda").open("/visits/" + visit);
        assertThat(edda.only("h1").text()).startsWith("Prevents");
        assertThat(edda.text()).contains("Found at the visit of");
        String strike = "form[action$=/strike]";
        edda.open("/visits/" + first + "/told").send(strike, Map.of("why", "", "password", OpenSalon.PASSWORD))
            .expect(422);
        assertThat(edda.text()).contains("Say how you know");
        edda.send(strike, Map.of("why", "A bee stung her.", "password", "not it")).expect(422);
        assertThat(edda.text()).contains("That is not your password.");
        edda.send(strike, Map.of("why", "A bee stung her.", "password", OpenSalon.PASSWORD)).expect(200);
        assertThat(edda.text()).contains("Struck out by Edda", "A bee stung her.");
        assertThat(edda.open("/visits/" + visit).only("h1").text()).doesNotStartWith("Prevents");
        assertThat(edda.open("/owner").send("form.trail", Map.of("act", "reaction")).text())
            .contains("reaction told of", "told reaction struck out");
    }

    @Test
    @DisplayName("after the service the link opens what can be told, and nothing that was answered")
    void theLinkAfterTheService() {
        String link = knocking.link(visit);
        Walker phone = new Walker().open(link).send(BORN);
        Answering.on(phone, Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        close(visit);
        for (String shut : List.of("/answers/read-back", "/answers/reactions", "/answers/sign", "/answers/done",
            "/answers/take-back")) {
            assertThat(phone.open(shut).at()).as(shut).isEqualTo("/answers/after");
        }
        assertThat(phone.page().select("a[href=/answers/copy]")).as("what was signed").hasSize(1);
        phone.open("/answers/copy").expect(200);
        Walker other = new Walker().open(link).expect(200);
        assertThat(other.text()).as("urgent signs before the birth date").contains("Call 999 at once if")
            .doesNotContain("minutes");
        other.send("main form", BORN);
        assertThat(other.at()).as("another browser sees what shows nothing, and a code before anything more")
            .isEqualTo("/answers/after");
        assertThat(tells(other, Map.of("felt", "nose", "began", "while-on")).expect(200).at())
            .as("a reaction waits for no code").isEqualTo("/answers/reaction/told");
        assertThat(other.open("/answers/copy").at()).isEqualTo("/code");
        assertThat(other.open("/answers/complaint").at()).isEqualTo("/code");
        clock.move(Duration.ofDays(80));
        phone.open("/answers/after").expect(200);
        clock.move(Duration.ofDays(30));
        phone.open("/answers/after").expect(403);
        new Walker().open(link).expect(200);
        clock.move(Duration.ofDays(6 * 365 - 112));
        new Walker().open(link).expect(200);
        clock.move(Duration.ofDays(60));
        new Walker().open(link).expect(404);
    }

    @Test
    @DisplayName("nothing about health is taken before the notice was agreed to; the urgent signs stand all the same")
    void noReactionBeforeTheNotice() {
        Walker phone = knocking.come(visit, Map.of()).walker();
        assertThat(phone.open("/answers/reaction").expect(200).text()).contains("Call 999");
        assertThat(phone.open("/answers/reaction/tell").at()).isEqualTo("/answers/notice");
    }

    @Test
    @DisplayName("at the spot of a skin test it is told on the test's own page")
    void atTheSpotOfTheTest() {
        visit = chair.planned(Map.of());
        chair.applied(visit);
        Walker phone = new Walker().open(knocking.link(visit)).send(BORN);
        phone.open("/answers/reaction").expect(200).send("form[action$=/spot]", Map.of()).expect(200);
        assertThat(phone.at()).startsWith("/a/").endsWith("/look");
        phone.send(Map.of("sign", "blisters", "began", "same-day")).expect(200);
        assertThat(chair.standing(visit)).isEqualTo("prevents");
    }

    @Test
    @DisplayName("a complaint is kept in her words, with the date by which it is acknowledged; the owner acknowledges and answers it, and she reads both")
    void aComplaintIsAcknowledgedAndAnswered() {
        Walker phone = signed();
        phone.open(phone.only("a[href=/answers/complaint]").attr("href")).expect(200);
        assertThat(phone.send(Map.of("words", " ")).expect(422).text()).contains("Write what went wrong.");
        phone.send(Map.of("words", "x".repeat(4001))).expect(422);
        assertThat(phone.only("textarea").text()).as("nothing typed is lost").hasSize(4001);
        List<Map.Entry<String, String>> form = new ArrayList<>(nothingWritten(phone));
        form.add(Map.entry("words", "You sent my answers to <my sister>."));
        phone.post("/answers/complaint", form).expect(200);
        phone.post("/answers/complaint", form).expect(200);
        assertThat(phone.text()).contains("Your complaint arrived", "You sent my answers to <my sister>.",
            "Alder & Wren must confirm by", "You can always complain to");
        assertThat(rows("select count(*) from complaint where visit_id = :visit")).isOne();
        assertThat(rows("select count(*) from complaint where visit_id = :visit and body like '%sister%'")).isZero();
        Walker sanna = salon.as("sanna").open("/desk");
        assertThat(sanna.text()).contains("A complaint: the owner acknowledges it").doesNotContain("sister");
        Walker edda = salon.as("edda").open("/owner");
        assertThat(edda.text()).contains("Acknowledge by").doesNotContain("sister");
        String at = complaints().get(0);
        assertThat(edda.page().select("a[href=" + at + "]")).hasSize(1);
        salon.as("petra").open(at).expect(403);
        sanna.open(at).expect(403);
        assertThat(edda.open(at).expect(200).text()).contains("You sent my answers to <my sister>.");
        edda.send("form[action$=/acknowledge]", Map.of()).expect(200);
        assertThat(edda.text()).contains("Acknowledged by Edda").doesNotContain("Acknowledge by");
        assertThat(rows("select count(*) from task where visit_id = :visit and open_as is not null")).isZero();
        assertThat(phone.open("/answers/complaint").text())
            .contains("Edda", "confirmed it", "The answer will stand here")
            .doesNotContain("must confirm by");
        edda.send("form[action$=/answer]", Map.of("answer", "")).expect(422);
        edda.send("form[action$=/answer]", Map.of("answer", "They went to nobody: we looked.")).expect(200);
        assertThat(phone.open("/answers/complaint").text()).contains("They went to nobody: we looked.");
        assertThat(edda.open("/owner").page().select("a[href=" + at + "]")).as("answered, it waits no more").isEmpty();
        assertThat(edda.send("form.trail", Map.of("act", "complaint", "client", "Brandt")).text())
            .contains("complaint made", "complaint acknowledged", "complaint answered");
        String card = "/clients/" + QuarkusTransaction.requiringNew()
            .call(() -> Visit.<Visit>findById(visit).client.id) + "/card";
        assertThat(edda.open(card).text()).contains("Made on", "Answered by Edda").doesNotContain("sister");
    }

    @Test
    @DisplayName("of two complaints the second still waits when the first is acknowledged")
    void twoComplaints() {
        Walker phone = signed();
        phone.open("/answers/complaint").send(Map.of("words", "First."));
        clock.move(Duration.ofDays(1));
        phone.open("/answers/complaint").send(Map.of("words", "Second.")).expect(200);
        List<String> both = complaints();
        Walker edda = salon.as("edda").open(both.get(0)).send("form[action$=/acknowledge]", Map.of()).expect(200);
        assertThat(rows("select count(*) from task where visit_id = :visit and open_as is not null")).isOne();
        edda.open(both.get(1)).send("form[action$=/acknowledge]", Map.of()).expect(200);
        assertThat(rows("select count(*) from task where visit_id = :visit and open_as is not null")).isZero();
    }

    @Test
    @DisplayName("what was signed in Spanish is read in English as a copy that says nobody signed it and names what was signed by its hash")
    void aCopyInTheStaffsLanguage() throws IOException {
        Walker phone = new Walker().open(knocking.link(visit)).send("form.tongues", Map.of("language", "es"))
            .send("form[action$=birth-date]", BORN);
        Answering.on(phone, Map.of("asthma", List.of("yes"))).agree().all().readBack().sign("Ottilie Brandt");
        assertThat(phone.at()).isEqualTo("/answers/done");
        Walker petra = salon.as("petra").open("/visits/" + visit).expect(200);
        String signed = text(petra.open("/visits/" + visit + "/consent/1").expect(200));
        assertThat(signed).contains("Lo que");
        petra.open("/visits/" + visit);
        assertThat(petra.only("a[href$=/consent/1/copy]").text()).isEqualTo("in English");
        String copy = text(petra.open(petra.only("a[href$=/consent/1/copy]").attr("href")).expect(200));
        assertThat(copy).contains("This is a copy in English. Nobody signed it.", "(Spanish)", "What I answered",
            "What I agree to", "SHA-256").doesNotContain("Lo que");
        petra.open("/visits/" + visit + "/consent/9/copy").expect(404);
    }

    @Test
    @DisplayName("what was signed in English needs no copy in English")
    void noCopyOfWhatStaffRead() {
        signed();
        Walker petra = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(petra.page().select("a[href$=/copy]")).isEmpty();
        petra.open("/visits/" + visit + "/consent/1/copy").expect(404);
        salon.as("sanna").open("/visits/" + visit + "/consent/1/copy").expect(403);
    }

    private static String text(Walker at) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(at.response().asByteArray())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
