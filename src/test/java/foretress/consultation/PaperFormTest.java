package foretress.consultation;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.salon.OpenSalon;
import foretress.visit.Visit;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("R57: a paper form that staff type in")
class PaperFormTest {
    private static final byte[] PAPER = "%PDF-1.7 an invented form".getBytes(StandardCharsets.US_ASCII);

    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;
    UUID visit;
    String at;

    @BeforeEach
    void aVisitIsBooked() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        at = "/visits/" + visit + "/paper";
    }

    private int kept(Walker staff, String day, String agreed, String signed, byte[] paper) {
        staff.open(at).expect(200);
        return RestAssured.given().redirects().follow(false).cookies(staff.cookies())
            .header("Origin", RestAssured.baseURI + ":" + RestAssured.port)
            .header("Accept", "text/html")
            .multiPart("csrf-token", staff.page().selectFirst("main form [name=csrf-token]").val())
            .multiPart("day", day).multiPart("agreed", agreed).multiPart("signed", signed)
            .multiPart("paper", "form.pdf", paper, "application/pdf")
            .post(at).statusCode();
    }

    private Walker typedIn(Map<String, List<String>> told) {
        Walker petra = salon.as("petra");
        assertThat(kept(petra, "2026-01-05", "yes", "yes", PAPER)).isEqualTo(303);
        Answering typing = Answering.on(petra.open(at), told);
        for (int i = 0; i < 60 && !petra.page().select("form[action$=/paper/answers]").isEmpty(); i++) {
            typing.page();
        }
        assertThat(petra.text()).contains("Everything on the paper is typed in", "Typed from paper by Petra Lind");
        return petra;
    }

    @Test
    @DisplayName("is kept as such, stands the same as answers given on a screen, and the consent says who typed it in and when it was signed")
    void theConsentSaysThatItWasTypedFromPaper() throws Exception {
        Map<String, List<String>> told = Map.of("asthma", List.of("yes"));
        Walker petra = typedIn(told);
        petra.send("form[action$=hand-over]", Map.of());
        petra.send(Map.of("day", "4", "month", "3", "year", "1965"));
        assertThat(petra.at()).isEqualTo("/answers/read-back");
        Answering.on(petra, Map.of()).readBack().sign("Ottilie Brandt");
        assertThat(petra.at()).isEqualTo("/answers/done");
        Evidence how = QuarkusTransaction.requiringNew()
            .call(() -> consents.evidence(consents.latest(visit).orElseThrow()).how().evidence());
        assertThat(how.typed()).hasValueSatisfying(typed -> {
            assertThat(typed.by()).isEqualTo("Petra Lind");
            assertThat(typed.signedOn()).isEqualTo(LocalDate.of(2026, 1, 5));
        });
        byte[] pdf = QuarkusTransaction.requiringNew().call(() -> consents.pdf(consents.latest(visit).orElseThrow()));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document).replaceAll("\\s+", " "))
                .contains("written on the paper form", "Petra Lind typed them in");
        }
        UUID screen = make.visit(LocalDate.of(1965, 3, 4));
        knocking.come(screen, told).agree().all().readBack().sign("Ottilie Brandt");
        assertThat(standing(visit)).isNotEmpty().isEqualTo(standing(screen));
    }

    private static String standing(UUID visit) {
        return QuarkusTransaction.requiringNew().call(() -> Visit.<Visit>findById(visit).standing().orElse(""));
    }

    @Test
    @DisplayName("is not begun without the ticked box, the signature, its day and a picture of it")
    void nothingIsTypedWithoutTheSignedPaper() {
        Walker petra = salon.as("petra");
        assertThat(kept(petra, "2026-01-05", "", "yes", PAPER)).isEqualTo(422);
        assertThat(kept(petra, "2026-01-05", "yes", "", PAPER)).isEqualTo(422);
        assertThat(kept(petra, "", "yes", "yes", PAPER)).isEqualTo(422);
        assertThat(kept(petra, "2199-01-05", "yes", "yes", PAPER)).isEqualTo(422);
        assertThat(kept(petra, "2026-01-05", "yes", "yes", "no picture at all".getBytes(StandardCharsets.US_ASCII)))
            .isEqualTo(422);
        assertThat(petra.open(at).page().select("form[action$=/paper/answers]")).isEmpty();
    }

    @Test
    @DisplayName("is handed out as a file, never shown in a page, and the desk sees none of it")
    void thePaperIsHandedOutAsAFile() {
        Walker petra = salon.as("petra");
        kept(petra, "2026-01-05", "yes", "yes", PAPER);
        Response answer = RestAssured.given().cookies(petra.cookies()).get(at + "/picture");
        assertThat(answer.header("Content-Disposition")).startsWith("attachment");
        assertThat(answer.asByteArray()).isEqualTo(PAPER);
        salon.as("sanna").open(at).expect(403);
        salon.as("sanna").open(at + "/picture").expect(403);
    }

    @Test
    @DisplayName("does not overwrite what the client has begun to answer alone")
    void aClientWhoAnswersAloneIsNotTypedOver() {
        knocking.come(visit, Map.of()).agree();
        assertThat(salon.as("petra").open(at).at()).isEqualTo("/visits/" + visit);
    }
}
