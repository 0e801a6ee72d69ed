package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Long and hostile texts: the work grows with the text, nothing is thrown, nothing is lost. Comparisons are counted, not seconds. */
@Execution(ExecutionMode.CONCURRENT)
class LongLabelTest {
    private static final int LONG = 10_000;

    private static long comparisons(String part, int length) {
        var counter = new LongAdder();
        new LabelLexicon(ShippedLexicon.SUBSTANCES, counter::increment).read(part.repeat(length / part.length()));
        return counter.sum();
    }

    @ParameterizedTest
    @ValueSource(strings = { "zzyzx ", "p-phenylendiamin, ", "sodium ", "mi ", "lauryl ", "2,5-diamino ",
        "silver nitrit\n", "abcdefghijklmnop", "([" })
    void twiceTheTextIsAboutTwiceTheWork(String part) {
        long half = comparisons(part, LONG / 2);
        long whole = comparisons(part, LONG);
        assertThat(whole).as(part).isLessThanOrEqualTo(2 * half + half / 4 + 2_000);
        assertThat(comparisons(part, 2 * LONG)).as(part).isLessThanOrEqualTo(2 * whole + whole / 4 + 2_000);
    }

    @Test
    void hostileTextsAreReadToTheEnd() {
        List<String> hostile = List.of("x".repeat(LONG), ",".repeat(LONG), "(".repeat(LONG / 2) + ")".repeat(LONG / 2),
            "[{(".repeat(3_000), "\u202e".repeat(LONG),
            "שלום, مرحبا, ".repeat(700), "🧴🧪".repeat(2_000), "\0".repeat(LONG), "a\0b\0".repeat(2_000),
            "no ".repeat(3_000), "free of ".repeat(1_200),
            "1 ".repeat(5_000), "\ud800".repeat(500), "\n".repeat(LONG), "106-50-".repeat(1_400), "+/-".repeat(3_000),
            "p-".repeat(5_000), "ﬃ".repeat(3_000));
        for (String text : hostile) {
            LabelReading reading = ShippedLexicon.LABELS.read(text + "\n\n; bismuth citrate");
            assertThat(reading.found()).as(text.substring(0, 12)).extracting(f -> f.substance().name())
                .contains("BISMUTH CITRATE");
            assertThat(ShippedLexicon.MEDICINES.read(text.substring(0, 200) + ", methotrexate").names())
                .as(text.substring(0, 12)).last()
                .satisfies(name -> assertThat(name.kinds()).contains("immunosuppressant"));
        }
    }

    @Test
    void tenThousandLettersWithoutASeparatorAreOneUnknownWord() {
        assertThat(ShippedLexicon.LABELS.read("x".repeat(LONG)).unknown()).hasSize(1);
    }
}
