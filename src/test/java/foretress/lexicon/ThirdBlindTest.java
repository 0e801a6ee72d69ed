package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.Substance.Risk;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Eighty lists in six languages and 332 lines of medicines, written and sealed before their author opened the reader, its tables or
 * the older sets. The author knew which kinds had been missed before, and mended the reader afterwards: a weaker blindness than that
 * of the sets before. First scored on 30 November 2026, before anything was tuned on it: lists 95.0 % clean and 88.9 % damaged,
 * precision 92.2 % and 90.4 % by the marks alone, medicines 98.6 %. Then kinds it showed were mended, so it is blind no longer; the
 * floors hold what is reached now. In the lists a marked name that the lexicon does
 * not know counts as missed; of the medicines two such ("carbidopa", "blood pressure") count for nothing.
 */
@DisplayName("R48, R49, R51: lists and lines written before the reader was opened")
class ThirdBlindTest {
    private static final Path LABELS = Path.of("src/test/resources/labels/third/lists.yaml");
    private static final Path MEDICINES = Path.of("src/test/resources/medicines/third/lines.csv");
    private static final Pattern LINE = Pattern.compile("(?m)^\"(.*)\"$");
    /** They stand in the lists and bear a risk, but the author marked only dyes, metals, alkalis, oxidants, reducers and sensitisers. */
    private static final Set<String> THERE_BUT_NOT_MARKED = Set.of("PROPYLENE GLYCOL", "LINALOOL", "LIMONENE",
        "BENZYL ALCOHOL", "PHENOXYETHANOL", "LANOLIN", "OXYQUINOLINE SULFATE", "COCAMIDOPROPYL BETAINE",
        "ZINC DIBUTYLDITHIOCARBAMATE", "ZINC SULFATE", "BASIC RED 118", "CHAMOMILLA RECUTITA FLOWER EXTRACT");
    private static final List<Listed> LISTS = lists();
    private static final List<Line> LINES = lines();

    private record Listed(String id, String clean, String damaged, List<String> contains) {}

    private record Line(String typed, List<String> taken, List<String> named) {
        static Line of(String row) {
            String[] fields = row.split("\",\"", -1);
            return new Line(fields[0].replace("\"\"", "\""), names(fields[1]), names(fields[2]));
        }

        private static List<String> names(String names) {
            return Arrays.stream(names.split(";")).filter(name -> !name.isBlank()).toList();
        }
    }

    /** Of one reading of one list: marked, found of these, read as a risk, and truly so. */
    private record Tally(int marked, int found, int read, int right) {
        Tally plus(Tally other) {
            return new Tally(marked + other.marked, found + other.found, read + other.read, right + other.right);
        }

        double recall() {
            return (double) found / marked;
        }

        double precision() {
            return (double) right / read;
        }
    }

    private static List<Listed> lists() {
        List<?> all = (List<?>) new Load(LoadSettings.builder().build()).loadFromString(text(LABELS));
        return all.stream().map(Map.class::cast).map(list -> new Listed("" + list.get("id"), "" + list.get("text"),
            "" + list.get("damaged"), ((List<?>) list.get("contains")).stream().map(Object::toString).toList()))
            .toList();
    }

    private static List<Line> lines() {
        return LINE.matcher(text(MEDICINES)).results().map(found -> Line.of(found.group(1))).toList();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Ammonia in water and ammonium hydroxide are one thing on a label, and one entry of the law. */
    private static String same(String name) {
        return name.equals("AMMONIA") ? "AMMONIUM HYDROXIDE" : name;
    }

    private static Set<String> names(String text, boolean risksOnly) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(LabelReading.Found::substance)
            .filter(substance -> !risksOnly || substance.risk() != Risk.NONE).map(Substance::name)
            .map(ThirdBlindTest::same).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Tally tally(Listed list, String text) {
        Set<String> read = names(text, false);
        List<Set<String>> marked = list.contains().stream().map(name -> names(name, false)).toList();
        Set<String> there = marked.stream().flatMap(Set::stream).collect(Collectors.toSet());
        there.addAll(THERE_BUT_NOT_MARKED);
        Set<String> risks = names(text, true);
        return new Tally(marked.size(),
            (int) marked.stream().filter(names -> !names.isEmpty() && read.containsAll(names)).count(), risks.size(),
            (int) risks.stream().filter(there::contains).count());
    }

    private static Tally total(boolean damaged) {
        return LISTS.stream().map(list -> tally(list, damaged ? list.damaged() : list.clean()))
            .reduce(new Tally(0, 0, 0, 0), Tally::plus);
    }

    private static Set<String> kinds(Stream<String> names) {
        return names.flatMap(name -> ShippedLexicon.kinds(name).stream())
            .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void thereAreEightyListsAndOverThreeHundredLines() {
        assertThat(LISTS).hasSize(80);
        assertThat(LINES).hasSize(332);
    }

    @Test
    void cleanListsAreRead() {
        Tally all = total(false);
        assertThat(all.recall()).as("%s", all).isGreaterThanOrEqualTo(0.992);
        assertThat(all.precision()).as("%s", all).isGreaterThanOrEqualTo(0.988);
    }

    @Test
    void damagedListsAreMostlyRead() {
        Tally all = total(true);
        assertThat(all.recall()).as("%s", all).isGreaterThanOrEqualTo(0.936);
        assertThat(all.precision()).as("%s", all).isGreaterThanOrEqualTo(0.965);
    }

    @Test
    @DisplayName("R51: what is marked and not found leaves something unknown, clean or damaged")
    void nothingIsLostUnsaid() {
        for (boolean damaged : new boolean[] { false, true }) {
            for (Listed list : LISTS) {
                String text = damaged ? list.damaged() : list.clean();
                Tally all = tally(list, text);
                assertThat(all.found() == all.marked() || !ShippedLexicon.LABELS.read(text).allSure())
                    .as("%s: %s", list.id(), all).isTrue();
            }
        }
    }

    /** Of "blood pressure" without a name no class can be told: it goes to a person to look up. */
    @Test
    void medicinesAreReadAndNoneIsReadAsAnother() {
        Score taken =
            LINES.stream().map(line -> Score.of(kinds(line.taken().stream()), ShippedLexicon.kinds(line.typed())))
                .reduce(Score.NONE, Score::plus);
        List<String> others = new ArrayList<>();
        for (Line line : LINES) {
            if (!kinds(Stream.concat(line.taken().stream(), line.named().stream()))
                .containsAll(ShippedLexicon.kinds(line.typed()))) {
                others.add(line.typed());
            }
        }
        assertThat(taken.recall()).as("%s", taken).isGreaterThanOrEqualTo(0.991);
        assertThat(others).as("marked as steroid alone; a cream of it is read as one on the skin")
            .containsExactly("steroid cream");
    }
}
