package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.LabelReading.Unknown;
import foretress.lexicon.Substance.Risk;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole lists: everything of weight in them is found, in their order, and nothing else; classes by hand from Annexes II to V. */
class CleanListsTest {
    private static final Map<Risk, String> LETTER =
        Map.of(Risk.PPD_GROUP_ALLERGEN, "P", Risk.METAL_RESIDUE, "M", Risk.METAL_TRACE, "T",
            Risk.OTHER_ALLERGEN, "A", Risk.IRRITANT, "I", Risk.NONE, "");

    static Stream<String> lists() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/labels/clean.txt")).stream()
            .filter(l -> !l.startsWith("#"));
    }

    private static List<String> expected(String line) {
        String after = line.substring(line.lastIndexOf('|') + 1).strip();
        return after.equals("-") ? List.of() : Arrays.asList(after.split(" "));
    }

    private static String list(String line) {
        return line.substring(0, line.lastIndexOf('|')).strip();
    }

    private static List<String> letters(String text) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(f -> LETTER.get(f.substance().risk()))
            .filter(l -> !l.isEmpty()).toList();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void everythingOfWeightIsFoundAndNothingElse(String line) {
        assertThat(letters(list(line))).isEqualTo(expected(line));
    }

    @ParameterizedTest
    @MethodSource("lists")
    void inCapitalsWithoutCommasOrOnLinesTheSame(String line) {
        assertThat(letters(list(line).toUpperCase(java.util.Locale.ROOT))).isEqualTo(expected(line));
        assertThat(letters(list(line).replace(", ", "\n"))).isEqualTo(expected(line));
        assertThat(letters(list(line).replace(", ", " • "))).isEqualTo(expected(line));
        assertThat(letters(list(line).replace('-', '‑'))).isEqualTo(expected(line));
    }

    @Test
    void theListsLeaveAlmostNothingUnknown() throws IOException {
        List<String> unknown =
            lists().flatMap(l -> ShippedLexicon.LABELS.read(list(l)).unknown().stream()).map(Unknown::written).toList();
        assertThat(unknown).containsExactlyInAnyOrder("Laneth-15");
        assertThat(lists().count()).isGreaterThanOrEqualTo(30);
    }
}
