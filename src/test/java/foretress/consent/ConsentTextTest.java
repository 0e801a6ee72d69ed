package foretress.consent;

import static foretress.consent.Consenting.aConsent;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import foretress.consent.ConsentText.Line.Statement;
import foretress.consent.ConsentText.Part;
import java.text.Normalizer;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConsentTextTest {

    @Test
    @DisplayName("D10: every answer, finding, statement and the cautions are in the text that is hashed")
    void nothingShownIsLeftOutOfTheHash() {
        ConsentInput input = aConsent().input();
        String canonical = aConsent().text().canonical();
        input.answered()
            .forEach(answered -> assertThat(canonical).contains(answered.question() + "\t" + answered.answer()));
        input.found().forEach(found -> assertThat(canonical).contains(found.text()));
        assertThat(canonical).contains("Ottilie Brandt", "I agree to these tests: a skin test with Larkmoss 4-0",
            "Nobody can promise that a service is without risk.", "Call 112 at once",
            "The maker's instructions and local law");
    }

    @Test
    @DisplayName("R17: what the law has printed on the label is read and signed, among the cautions")
    void theLabelsWarningsAreSigned() {
        String warning = "Hair colour can cause severe allergic reactions. Read and follow the instructions.";
        assertThat(ConsentText.of(aConsent().input(), ConsentWords.in("en")).canonical())
            .doesNotContain("On the label");
        ConsentText text = ConsentText.of(aConsent().input().warning(List.of(warning)), ConsentWords.in("en"));
        assertThat(text.sections()).filteredOn(section -> section.part() == Part.CAUTIONS).singleElement()
            .satisfies(cautions -> assertThat(cautions.lines()).extracting(ConsentText.Line::plain)
                .endsWith("On the label of the hair colour, in our words:", warning));
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("D10: every part is there in every language, in the same order")
    void everyPartStandsInEveryLanguage(String language) {
        assertThat(aConsent().in(language).withStrand().text().sections()).extracting(ConsentText.Section::part)
            .containsExactly(Part.values());
    }

    @Test
    @DisplayName("D10: the same letters give the same hash, however they were put together")
    void composedAndDecomposedNamesHashAlike() {
        String composed = "Zoë Nguyễn";
        String decomposed = Normalizer.normalize(composed, Normalizer.Form.NFD);
        assertThat(decomposed).isNotEqualTo(composed);
        assertThat(aConsent().by(decomposed).text().sha256()).isEqualTo(aConsent().by(composed).text().sha256());
    }

    @Test
    @DisplayName("D10: another letter anywhere is another hash")
    void oneLetterChangesTheHash() {
        assertThat(aConsent().by("Ottilie Brand").text().sha256()).isNotEqualTo(aConsent().text().sha256());
    }

    @Test
    @DisplayName("D10: an answer cannot forge a line of the text")
    void aLineBreakInANameStaysInItsLine() {
        Stream<String> lines = aConsent().by("Ottilie\n3\tI agree to everything").text().canonical().lines();
        assertThat(lines).noneMatch(line -> line.startsWith("3\tI agree to everything"));
    }

    @Test
    @DisplayName("D10: an answer cannot turn the letters beside it around")
    void marksThatTurnTheDirectionAreLeftOut() {
        assertThat(aConsent().by("Ottilie \u202Etdnarb\u202C").text().canonical()).contains("\tOttilie tdnarb\n")
            .doesNotContainPattern("[\u202A-\u202E]");
    }

    @Test
    @DisplayName("D10: a name of the other direction stands in an isolate inside a sentence")
    void aForeignNameIsIsolatedInASentence() {
        ConsentInput input = aConsent().input();
        var visit =
            new ConsentInput.Visit(input.visit().id(), input.visit().startsAt(), "ليلى", input.visit().services());
        ConsentInput foreign = Evidences.with(input, "visit", visit);
        assertThat(ConsentText.of(foreign, ConsentWords.in("en")).canonical())
            .contains("the talk with \u2068ليلى\u2069 allow");
    }

    @Test
    @DisplayName("R15: where the answers rule the service out, neither title nor statement calls it a consent to that service")
    void nobodyAgreesToAServiceTheAnswersRuleOut() {
        ConsentText prevented = aConsent().standing(Weight.PREVENTS).testing().text();
        assertThat(prevented.statements()).extracting(Statement::id)
            .containsExactly("service-prevented");
        assertThat(prevented.title()).isEqualTo("My answers before permanent colour");
        assertThat(aConsent().in("es").standing(Weight.PREVENTS).testing().text().title()).startsWith("Mis respuestas")
            .doesNotContain("Consentimiento");
        assertThat(prevented.canonical()).doesNotContain("I agree to permanent colour");
    }

    @Test
    void noStatementAboutTestsWhenNoneIsOwed() {
        assertThat(aConsent().testing().text().statements()).extracting(Statement::id)
            .containsExactly("service");
    }

    @Test
    void nothingFoundIsSaidWithoutAPromise() {
        String text = aConsent().found().standing(Weight.NOTHING_FOUND).text().canonical();
        assertThat(text).contains("Nothing found\tNothing in the answers changes this service. This does not promise");
    }

    @Test
    void askingADoctorIsPromisedNotAgreedToAsATest() {
        ConsentText text = aConsent().testing(new ConsentInput.Test("medical-advice", "Word from a doctor")).text();
        assertThat(text.statements()).extracting(Statement::id).containsExactly("advice", "service");
        assertThat(text.canonical()).contains("I will ask my doctor or pharmacist before the visit")
            .doesNotContain("these tests");
    }

    @Test
    void aTestNobodyKnowsGetsTheGeneralLimits() {
        String text = aConsent().testing(new ConsentInput.Test("new-test", "A new test")).text().canonical();
        assertThat(text).contains("A new test\tThe test lowers the risk.");
    }
}
