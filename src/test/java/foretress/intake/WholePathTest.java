package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.MovedClock;
import foretress.Walker;
import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.consent.Consents;
import foretress.invitation.Invitations;
import foretress.knowledge.Knowledge;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The main path through the real forms: link, birth date, notice, answers, reading back, signing, the copy, the stylist. */
@QuarkusTest
class WholePathTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Invitations invitations;
    @Inject Consents consents;
    @Inject Assessments assessments;
    @Inject Knowledge knowledge;
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

    private Answering client(Map<String, List<String>> told) {
        String link = invitations.issueLink(visit, "server").replaceAll("^https?://[^/]+", "");
        Walker walker = new Walker().open(link).send(Map.of("language", "en")).send(Map.of("day", "4", "month", "3", "year", "1965"));
        return new Answering(walker, told);
    }

    @DisplayName("A7, D10, D13: a client answers, reads back, signs by typing and gets the very bytes the salon keeps")
    @Test
    void aClientAnswersSignsAndGetsACopy() throws Exception {
        Answering client = client(Map.of()).agree().all().readBack().sign("Ottilie Brandt");
        client.walker().expect(200);
        assertThat(client.walker().at()).isEqualTo("/answers/done");
        byte[] copy = client.walker().open("/answers/copy").expect(200).response().asByteArray();
        assertThat(copy).isEqualTo(consents.pdf(consents.latest(visit).orElseThrow()));
        String text = new PDFTextStripper().getText(Loader.loadPDF(copy));
        assertThat(text).contains("Ottilie Brandt", "Alder & Wren", "How this was signed");
    }

    @Test
    void theStylistSeesTheLotionTheMapTheTestAndTheSignedPaper() {
        client(Map.of("darkening-lotion", List.of("some-time-ago"), "treatments.what", List.of("restorer"),
            "treatments.when.precision", List.of("years-ago"), "treatments.when.ago", List.of("1-2"), "treatments.zone", List.of("whole")))
            .agree().all().readBack().sign("Ottilie Brandt");
        Walker stylist = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Test first");
        assertThat(stylist.text()).contains("Incompatibility test", "Darkening lotion", "Consent 1, signed");
        assertThat(stylist.page().select(".strand-svg")).isNotEmpty();
        assertThat(stylist.open("/day").expect(200).text()).contains("Ottilie Brandt");
        assertThat(stylist.open("/visits/" + visit + "/consent/1").response().contentType()).isEqualTo("application/pdf");
    }

    @DisplayName("F20: what was found can be found again from the stored facts, with the rules of that version")
    @Test
    void aKeptAssessmentIsExplainedByItsOwnFacts() {
        client(Map.of("darkening-lotion", List.of("some-time-ago"), "asthma", List.of("yes"))).agree().all().readBack().sign("Ottilie Brandt");
        QuarkusTransaction.requiringNew().run(() -> {
            KeptAssessment kept = KeptAssessment.newest(visit).orElseThrow();
            Assessment then = assessments.read(kept);
            Assessment again = Assessor.assess(knowledge.ruleSet(), then.facts(), assessments.looked(Visit.findById(visit)));
            assertThat(kept.body).doesNotContain("metal");
            assertThat(then.ruleSetHash()).isEqualTo(kept.ruleSetSha256).isEqualTo(knowledge.ruleSet().hash());
            assertThat(again.findings()).isEqualTo(then.findings()).isNotEmpty();
            assertThat(again.standings()).isEqualTo(then.standings());
        });
    }

    @Test
    void anAnswerChangedAfterSigningWantsASignatureOfItsOwn() {
        Map<String, List<String>> told = new HashMap<>();
        Answering client = client(told).agree().all().readBack().sign("Ottilie Brandt");
        told.put("darkening-lotion", List.of("yes"));
        client.walker().open("/answers/home-colour").expect(200);
        client.page();
        assertThat(client.walker().open("/answers/sign").at()).isEqualTo("/answers/read-back");
        client.readBack().sign("Ottilie Brandt");
        assertThat(client.walker().at()).isEqualTo("/answers/done");
        assertThat(consents.all(visit)).extracting(c -> c.versionNo).containsExactly(2, 1);
    }

    @Test
    void aSevereReactionIsAnsweredAtOnceWithUrgentSignsAndANamedCall() {
        Answering client = client(Map.of("colour-reaction", List.of("yes"), "colour-reaction-what", List.of("swelling", "breathing"))).agree();
        client.page();
        client.page();
        assertThat(client.walker().at()).isEqualTo("/answers/care");
        assertThat(client.walker().text()).contains("Unwell now?", "Call 999", "Petra Lind telephones you");
        client.all();
        Walker stylist = salon.as("petra").open("/visits/" + visit).expect(200);
        assertThat(stylist.only("h1").text()).startsWith("Prevents");
        assertThat(stylist.text()).doesNotContain("Skin testbegun");
    }
}
