package foretress.consent;

import static foretress.consent.Consenting.SALON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoticeTest {

    private static Notice notice(String language, String authority) {
        return Notice.of(language, SALON, new Notice.Terms(6, 21, authority), ConsentWords.in(language));
    }

    /** The elements are those of GDPR Art. 13(1)(a), (c), (e), (2)(a), (b), (c), (d), (e), (f), and Art. 9(2)(a). */
    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("C4: the notice has every element, in every language")
    void everyElementIsThere(String language) {
        assertThat(notice(language, "uk").elements()).extracting(Notice.Element::id).containsExactly("controller",
            "purposes",
            "legal-basis", "also-kept", "recipients", "how-long", "rights", "withdrawal", "complaint", "must-i-answer",
            "who-decides");
        assertThat(notice(language, "uk").elements()).allSatisfy(element -> {
            assertThat(element.heading()).isNotBlank();
            assertThat(element.text()).isNotBlank().doesNotContain("{");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("four lines are read first; each is said in full further down, and what is hashed holds both")
    void theFirstLayerIsShortAndHashed(String language) {
        Notice notice = notice(language, "uk");
        assertThat(notice.brief()).hasSize(4).allSatisfy(line -> {
            assertThat(line.text()).isNotBlank().doesNotContain("{");
            assertThat(line.text().split(" ")).hasSizeLessThanOrEqualTo(22);
            assertThat(notice.elements()).extracting(Notice.Element::id).contains(line.id());
            assertThat(notice.canonical()).contains(line.heading() + '\t' + line.text());
        });
    }

    @Test
    @DisplayName("C1, C4: who holds the answers, on what ground, how long, whom to complain to")
    void theNoticeNamesNamesAndNumbers() {
        assertThat(notice("en", "uk").canonical()).contains("Alder & Wren, 3 Millrace Lane, Tarnbeck",
            "desk@alder-and-wren.example",
            "Article 9(2)(a), explicit consent", "6 years after your last visit", "Information Commissioner",
            "one month");
    }

    @Test
    @DisplayName("C14: a named person decides, never the machine")
    void aPersonDecides() {
        assertThat(notice("en", "eu").canonical()).contains("A named person at the salon, together with you");
        assertThat(notice("es", "eu").canonical()).contains("Una persona del salón, con nombre, junto con usted");
    }

    @ParameterizedTest
    @CsvSource({ "en, uk", "en, eu", "en, us", "es, uk", "es, eu", "es, us" })
    @DisplayName("R16: the notice promises no deletion, no way back as easy as the way in, and no rule-free program")
    void onlyWhatIsSoIsSaid(String language, String authority) {
        assertThat(notice(language, authority).canonical()).doesNotContainIgnoringCase("they are deleted", "as easily",
            "never decides",
            "se borran", "tan fácil", "nunca decide");
    }

    @Test
    @DisplayName("R16: each place is told of its own law: the United States of no European article")
    void eachPlaceReadsOfItsOwnLaw() {
        assertThat(notice("en", "us").canonical()).doesNotContain("GDPR", "one month").contains("attorney general");
        assertThat(notice("en", "other").canonical()).doesNotContain("GDPR", "one month");
        assertThat(notice("en", "uk").canonical()).contains("UK GDPR Article 9(2)(a)");
        assertThat(notice("es", "us").canonical()).doesNotContain("RGPD");
    }

    @Test
    @DisplayName("R16: who handles data for the salon, the address a signature came from, and a minor's longer time are told")
    void processorsAddressAndMinorsAreTold() {
        assertThat(notice("en", "uk").canonical()).contains("computer, mail or backups", "address on the internet",
            "until you are 21");
    }

    @Test
    @DisplayName("C1: the consent to holding health answers speaks of nothing else")
    void theOneBoxIsForOneThing() {
        String agree = notice("en", "uk").agree().toLowerCase(Locale.ROOT);
        assertThat(agree).contains("health").doesNotContain("service", "test", "photo", "reminder", "advert");
    }

    @ParameterizedTest
    @CsvSource({ "en, uk", "en, eu", "en, us", "en, other", "es, uk", "es, eu", "es, us", "es, other" })
    void everyAuthorityHasItsWords(String language, String authority) {
        assertThat(notice(language, authority).canonical()).isNotBlank();
    }

    @Test
    @DisplayName("C2: other words, another language, another salon or other years are another hash")
    void theHashTellsNoticesApart() {
        String ours = notice("en", "uk").sha256();
        assertThat(ours).matches("[0-9a-f]{64}").isEqualTo(notice("en", "uk").sha256());
        assertThat(notice("es", "uk").sha256()).isNotEqualTo(ours);
        assertThat(notice("en", "eu").sha256()).isNotEqualTo(ours);
        assertThat(Notice.of("en", SALON, new Notice.Terms(7, 21, "uk"), ConsentWords.in("en")).sha256())
            .isNotEqualTo(ours);
    }

    @ParameterizedTest
    @ValueSource(ints = { 0, -1, 31 })
    void recordsAreNeverKeptForNoTimeOrForEver(int years) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Notice.Terms(years, 21, "uk"));
    }
}
