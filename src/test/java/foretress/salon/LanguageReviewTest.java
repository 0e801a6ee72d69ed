package foretress.salon;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.Walker;
import foretress.knowledge.Loaded;
import foretress.web.SpokenLanguages;
import foretress.web.Supported;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A drafted language is shown to nobody until a named person stands for its words. */
@QuarkusTest
class LanguageReviewTest {
    @Inject OpenSalon salon;
    @Inject LanguageReviews reviews;
    @Inject SpokenLanguages spoken;
    @Inject Clock clock;

    @BeforeEach
    void nobodyHasReadTheSpanish() {
        salon.open();
        reviews.takeBack("es", salon.stylist().id);
    }

    @AfterEach
    void somebodyReadsIt() {
        salon.open();
    }

    @Test
    void aBrowserThatAsksForAnUnreadLanguageIsSpokenToInEnglishAndNobodyIsOfferedIt() {
        assertThat(spoken.tags()).doesNotContain("es").contains("en");
        assertThat(given().header("Accept-Language", "es-MX,en;q=0.5").get("/language").asString())
            .contains("lang=\"en\"").doesNotContain("value=\"es\"");
        assertThat(given().cookie("language", "es").get("/language").asString()).contains("<html lang=\"en\"");
    }

    @Test
    void itIsShownFromTheMomentANamedPersonStandsForItUntilThatIsTakenBack() {
        Walker edda = salon.as("edda").open("/languages/es");
        edda.send("#read", Map.of("reader", "Ines Vidal", "stands", "yes")).expect(200);
        assertThat(edda.page().text()).contains("Ines Vidal");
        assertThat(given().header("Accept-Language", "es").get("/language").asString()).contains("<html lang=\"es\"");
        edda.send("form[action$=/es/off]", Map.of()).expect(200);
        assertThat(given().header("Accept-Language", "es").get("/language").asString()).contains("<html lang=\"en\"");
    }

    @Test
    void withoutANameOrTheTickNothingIsShownAndWhatWasTypedStays() {
        Walker edda = salon.as("edda").open("/languages/es");
        edda.send("#read", Map.of("reader", "Ines Vidal")).expect(422);
        assertThat(edda.only("#reader").val()).isEqualTo("Ines Vidal");
        assertThat(edda.page().select(".mistake")).isNotEmpty();
        edda.send("#read", Map.of("reader", " ", "stands", "yes")).expect(422);
        assertThat(spoken.tags()).doesNotContain("es");
    }

    @Test
    void aSentenceThatChangedSinceIsCountedAndMarked() {
        Map<String, String> marks = reviews.sentences("es").marks();
        String path = "screens.say.care_title";
        assertThat(marks).containsKey(path);
        marks.put(path, "0");
        QuarkusTransaction.requiringNew()
            .run(() -> new LanguageReview("es", "Ines Vidal", LanguageReview.written(marks), salon.stylist().id,
                clock.instant()).persist());
        Walker edda = salon.as("edda").open("/languages");
        assertThat(edda.page().text()).contains("One sentence changed since.");
        assertThat(edda.open("/languages/es").page().select("td strong")).hasSize(1);
    }

    @Test
    void theSheetHoldsAllThatAClientReadsAndNothingThatOnlyStaffRead() {
        String page = salon.as("edda").open("/languages/es").page().text();
        assertThat(page).contains(Loaded.KNOWLEDGE.words("es").question("colour-reaction").ask())
            .contains(Loaded.KNOWLEDGE.words("es").finding("metal-meets-peroxide").client())
            .doesNotContain(Loaded.KNOWLEDGE.words("es").finding("metal-meets-peroxide").do_());
        assertThat(reviews.sentences("es").missing()).isEmpty();
    }

    @Test
    @DisplayName("a language without words, or the English itself, has no sheet")
    void onlyDraftsAreRead() {
        salon.as("edda").open("/languages/en").expect(404);
        salon.as("edda").open("/languages/xx").expect(404);
    }

    @Test
    void everyLanguageThatIsOfferedHasWordsAndEveryOneWithWordsIsOffered() {
        assertThat(Supported.TAGS).containsExactlyInAnyOrderElementsOf(Loaded.KNOWLEDGE.languages());
    }
}
