package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.knowledge.ShippedLexicon;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The check-digit rule of the CAS Registry (from memory), tried on numbers published in the EU's lists and in US law. */
class CasTest {

    /** PPD, silver nitrate, bismuth citrate, ME-PPD: the EU's CosIng list, Annex III/8a, 48, 292; 75 FR 14491. */
    @ParameterizedTest(name = "{0} ends in {1}")
    @CsvSource({ "106-50-3, 3", "7761-88-8, 8", "813-93-4, 4", "337906-36-2, 2" })
    void publishedNumbersPass(String number, int digit) {
        assertThat(Cas.valid(number)).isTrue();
        assertThat(Cas.checkDigit(number.substring(0, number.lastIndexOf('-')))).isEqualTo(digit);
    }

    /** Misprints in the CosIng export of 2025-12-08: III/278 (3248-91-7 is right), III/227, III/250. */
    @ParameterizedTest
    @ValueSource(strings = { "3245-91-7", "1693-43-4", "9556-89-9" })
    void publishedMisprintsFail(String number) {
        assertThat(Cas.valid(number)).isFalse();
        assertThatThrownBy(() -> new Cas(number)).hasMessageContaining("misprinted");
    }

    @Test
    void theRightNumberBehindAMisprintPasses() {
        assertThat(Cas.valid("3248-91-7")).isTrue();
    }

    /** CosIng III/198 is cut short: its last digit is 7. */
    @Test
    void aNumberCutShortGetsItsLastDigit() {
        assertThat(Cas.checkDigit("54381-16")).isEqualTo(7);
    }

    @Test
    void everyNumberShippedPasses() {
        assertThat(ShippedLexicon.SUBSTANCES.stream().filter(s -> s.cas().isPresent()).count())
            .isGreaterThanOrEqualTo(360);
    }

    @Test
    void aWrongLastDigitNeverPasses() {
        ShippedLexicon.SUBSTANCES.stream().flatMap(s -> s.cas().stream()).map(Cas::number).forEach(number -> {
            char last = number.charAt(number.length() - 1);
            String wrong = number.substring(0, number.length() - 1) + (last == '9' ? '0' : (char) (last + 1));
            assertThat(Cas.valid(wrong)).as(wrong).isFalse();
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "106-50", "106503", "1-50-3", "106-5-03", "0106-50-3", "12345678-50-3", "106-50-33",
        "a06-50-3" })
    void otherShapesAreNoNumber(String text) {
        assertThat(Cas.valid(text)).isFalse();
    }
}
