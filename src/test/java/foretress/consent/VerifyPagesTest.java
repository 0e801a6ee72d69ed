package foretress.consent;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.intake.Answering;
import foretress.intake.Knocking;
import foretress.salon.OpenSalon;
import foretress.seal.Foreign;
import foretress.visit.VisitMaker;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@QuarkusTest
@DisplayName("D8, D15: anybody who holds a paper learns whether it is the salon's, unchanged and current, and nothing else")
class VerifyPagesTest {
    @Inject OpenSalon salon;
    @Inject VisitMaker make;
    @Inject Knocking knocking;
    @Inject Consents consents;
    @Inject SealedPapers papers;
    UUID visit;
    Walker phone;

    @BeforeEach
    void aClientHasSigned() {
        salon.open();
        visit = make.visit(LocalDate.of(1965, 3, 4));
        phone = knocking.come(visit, Map.of()).agree().all().readBack().sign("Ottilie Brandt").walker();
    }

    private byte[] sealed() {
        return QuarkusTransaction.requiringNew().call(() -> papers.of(consents.latest(visit).orElseThrow()));
    }

    private static Response sent(byte[] file, String language) {
        Response asked = given().cookie("language", language).get("/verify");
        String token = Jsoup.parse(asked.asString()).selectFirst("[name=csrf-token]").val();
        return given().cookies(asked.cookies()).cookie("language", language).multiPart("csrf-token", token)
            .multiPart("paper", "paper.pdf", file, "application/pdf").post("/verify");
    }

    private Document checked(byte[] file) {
        Response answer = sent(file, "en");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("Cache-Control")).contains("no-store");
        assertThat(answer.asString()).as("nothing of the client").doesNotContain("Ottilie", "Brandt", "1965",
            visit.toString());
        return Jsoup.parse(answer.asString());
    }

    private void says(byte[] file, String verdict, String... words) {
        Document page = checked(file);
        assertThat(page.selectFirst("#found").attr("data-verdict")).isEqualTo(verdict);
        assertThat(page.selectFirst("#found").text()).contains(words);
    }

    @Test
    void theNewestPaperOfAVisitStands() {
        says(sealed(), "UNCHANGED", "Not a byte has changed since", "newest paper of its visit");
    }

    @Test
    void aPaperSignedAgainIsSuperseded() {
        byte[] first = sealed();
        phone.open("/answers/read-back");
        Answering.on(phone.open("/answers/reactions"), Map.of("colour-reaction", List.of("dont-know"))).page().all()
            .readBack().sign("Ottilie Brandt");
        assertThat(QuarkusTransaction.requiringNew().call(() -> consents.all(visit).size())).isEqualTo(2);
        says(first, "UNCHANGED", "A newer paper has taken its place");
        says(sealed(), "UNCHANGED", "newest paper of its visit");
    }

    @Test
    void consentTakenBackIsSaidWithoutDayOrReason() {
        byte[] paper = sealed();
        phone.open("/answers/take-back").send("main form", Map.of()).expect(200);
        says(paper, "UNCHANGED", "The consent in it was taken back");
    }

    @Test
    void aPaperThatIsErasedHereIsStillTheSalons() {
        byte[] paper = sealed();
        QuarkusTransaction.requiringNew().run(() -> SealedPaper.delete("fileSha256 is not null"));
        says(paper, "UNCHANGED", "no longer on file");
    }

    @Test
    @DisplayName("what was sealed before files were found again is found once the clock came round")
    void anOlderSealIsFound() {
        byte[] paper = sealed();
        QuarkusTransaction.requiringNew()
            .run(() -> SealedPaper.update("fileSha256 = null where fileSha256 is not null"));
        assertThat(papers.nameDue()).isPositive();
        says(paper, "UNCHANGED", "newest paper of its visit");
    }

    @Test
    void whatIsNotAsItWasSealedIsToldApart() {
        byte[] paper = sealed();
        byte[] turned = paper.clone();
        turned[2000] ^= 1;
        says(turned, "CHANGED", "not as it was sealed");
        byte[] longer = Arrays.copyOf(paper, paper.length + 3);
        says(longer, "ADDED_TO", "written behind the seal");
        byte[] own = QuarkusTransaction.requiringNew().call(() -> consents.pdf(consents.latest(visit).orElseThrow()));
        says(own, "NOT_SEALED", "Ask the salon for the sealed copy");
        says(Foreign.sealed(own), "OTHER_SEAL", "Not this salon’s seal");
        says("%PDF-1.7 or so".getBytes(StandardCharsets.US_ASCII), "UNREADABLE", "no PDF that can be read");
    }

    @Test
    void withoutAFileItIsSaidBesideTheField() {
        Response answer = sent(new byte[0], "en");
        assertThat(answer.statusCode()).isEqualTo(422);
        Document page = Jsoup.parse(answer.asString());
        assertThat(page.selectFirst("#paper-mistake").text()).isEqualTo("Choose a PDF first.");
        assertThat(page.title()).startsWith("Please look again");
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es", "fr", "pl", "ar", "vi" })
    @DisplayName("what a seal cannot show stands under every answer, in every language")
    void theLimitsAreSaid(String language) {
        Document page = Jsoup.parse(sent(sealed(), language).asString());
        assertThat(page.selectFirst("html").attr("lang")).isEqualTo(language);
        assertThat(page.selectFirst("#limits").text()).isNotBlank();
        assertThat(page.selectFirst("#found").attr("data-verdict")).isEqualTo("UNCHANGED");
    }
}
