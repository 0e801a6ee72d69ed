package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.PluralRules;
import com.ibm.icu.util.ULocale;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Held to ICU4J 76, which brings CLDR 46. */
class PluralFormTest {
    private static final String POLISH =
        "{years, plural, one {# rok} few {# lata} many {# lat} other {# roku}} od {day}";

    @ParameterizedTest
    @ValueSource(strings = { "en", "es", "fr", "pl", "ar", "vi" })
    @DisplayName("beside every whole number up to a thousand stands the form that ICU puts there")
    void theFormIsIcus(String language) {
        PluralRules icu = PluralRules.forLocale(ULocale.forLanguageTag(language));
        for (int count = 0; count <= 1_000; count++) {
            assertThat(PluralForm.of(language, count).word()).as("%s, %d", language, count)
                .isEqualTo(icu.select(count));
        }
    }

    @ParameterizedTest
    @CsvSource({ "1, 1 rok", "2, 2 lata", "5, 5 lat", "12, 12 lat", "22, 22 lata", "112, 112 lat" })
    void theNumberAndItsWordStandInTheSentence(int years, String said) {
        assertThat(Counted.say(POLISH, "pl", Map.of("years", years))).isEqualTo(said + " od {day}");
    }

    @Test
    @DisplayName("a form that a sentence leaves out is said as its other, and a sentence without forms takes the bare number")
    void whatIsLeftOut() {
        assertThat(Counted.say("{n, plural, one {# day} other {# days}}", "pl", Map.of("n", 3))).isEqualTo("3 days");
        assertThat(Counted.say("{n} and {m}", "en", Map.of("n", 3))).isEqualTo("3 and {m}");
        assertThat(List.of(0, 1, 2)).allSatisfy(n -> assertThat(
            Counted.say("{n, plural, one {# jour} other {# jours}}", "fr", Map.of("n", n)))
            .isEqualTo(n + (n < 2 ? " jour" : " jours")));
    }
}
