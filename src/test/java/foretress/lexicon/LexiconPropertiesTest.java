package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.LabelReading.Found;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** What holds of every text, not only of likely ones. */
class LexiconPropertiesTest {
    private static final List<String> NAMES = ShippedLexicon.SUBSTANCES.stream().map(Substance::name)
        .filter(name -> !LabelWords
            .countsOnlyAlone(String.join("", LabelToken.of(name).stream().map(LabelToken::folded).toList())))
        .toList();

    private static Set<String> found(String text) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(f -> f.substance().name())
            .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The word for a group goes when a member of it comes: what must stay is every other name, and every risk. */
    private static Set<String> staying(String text) {
        Set<String> staying = new TreeSet<>();
        ShippedLexicon.LABELS.read(text).found().forEach(f -> {
            boolean group = Groups.isGroup(f.substance().name()) || f.substance().name().startsWith("HENNA KIND");
            staying.add(group ? f.substance().risk().code() : f.substance().name());
            staying.add(f.substance().risk().code());
        });
        return staying;
    }

    @Provide
    Arbitrary<String> labels() {
        Arbitrary<String> parts = Arbitraries.oneOf(Arbitraries.of(NAMES),
            Arbitraries.of("free from", "no", "may contain", "ammonia-free", "2 %", "(1.5%)",
                "106-50-3", "CI 77491", "qwzx", "extract of nothing", "shade", "copper", "+/-", "p-", "-\n", "N,N-",
                "enthält kein", "sin"),
            Arbitraries.strings().ofMaxLength(6));
        return parts.list().ofMaxSize(14)
            .flatMap(list -> Arbitraries.of(", ", "; ", " ", "\n", "").map(by -> String.join(by, list)));
    }

    @Property(tries = 1_000, seed = "20261125")
    void readingNeverThrowsAndPlacesAreThoseOfTheText(@ForAll @StringLength(max = 400) String text) {
        LabelReading reading = ShippedLexicon.LABELS.read(text);
        assertThat(reading.found())
            .allSatisfy(f -> assertThat(text.substring(f.from(), f.to())).isEqualTo(f.written()));
        assertThat(reading.unknown())
            .allSatisfy(u -> assertThat(text.substring(u.from(), u.to())).isEqualTo(u.written()));
        ShippedLexicon.MEDICINES.read(text);
    }

    /** Found, unknown, claimed or beside: each word lies in one of them and in one alone. */
    @Property(tries = 1_000, seed = "20261125")
    void everyWordStandsInExactlyOneOfTheFour(@ForAll("labels") String text) {
        LabelReading reading = ShippedLexicon.LABELS.read(text);
        List<BitSet> four = new ArrayList<>();
        four.add(covered(reading.found().stream().map(f -> new int[] { f.from(), f.to() }).toList()));
        four.add(covered(reading.unknown().stream().map(u -> new int[] { u.from(), u.to() }).toList()));
        four.add(covered(reading.claims().stream().map(c -> new int[] { c.from(), c.to() }).toList()));
        four.add(covered(reading.beside().stream().map(b -> new int[] { b.from(), b.to() }).toList()));
        for (LabelToken token : LabelToken.of(text)) {
            for (int at = token.from(); at < token.to(); at++) {
                int place = at;
                assertThat(four.stream().filter(one -> one.get(place)).count())
                    .as("'%s' at %d of '%s': %s", token.plain(), at, text, reading).isEqualTo(1);
            }
        }
    }

    private static BitSet covered(List<int[]> spans) {
        var covered = new BitSet();
        spans.forEach(span -> covered.set(span[0], span[1]));
        return covered;
    }

    @Property(tries = 300, seed = "20261125")
    void whicheverSeparatorStandsBetweenNamesTheSameIsFound(@ForAll("names") List<String> names) {
        Set<String> by = found(String.join(", ", names));
        for (String separator : List.of("; ", " • ", "\n", " / ", " | ")) {
            assertThat(found(String.join(separator, names))).as("%s by '%s'", names, separator).isEqualTo(by);
        }
    }

    @Property(tries = 300, seed = "20261125")
    void inWhateverOrderTheSameIsFound(@ForAll("names") List<String> names, @ForAll @IntRange(max = 20) int turn) {
        List<String> turned = new ArrayList<>(names);
        java.util.Collections.rotate(turned, turn);
        assertThat(found(String.join(", ", turned))).isEqualTo(found(String.join(", ", names)));
    }

    @Property(tries = 300, seed = "20261125")
    void anotherItemNeverTakesAFoundOneAway(@ForAll("names") List<String> names, @ForAll("more") String more) {
        String list = String.join(", ", names);
        assertThat(staying(list + ", " + more)).as(more).containsAll(staying(list));
        assertThat(staying(more + "\n\n" + list)).as(more).containsAll(staying(list));
    }

    @Provide
    Arbitrary<List<String>> names() {
        return Arbitraries.of(NAMES).list().ofMinSize(1).ofMaxSize(12).uniqueElements();
    }

    @Provide
    Arbitrary<String> more() {
        return Arbitraries.oneOf(Arbitraries.of(NAMES),
            Arbitraries.strings().withCharRange('a', 'z').ofMinLength(1).ofMaxLength(12),
            Arbitraries.of("free from ammonia", "extract", "2 %", "106-50-3", "Silver Birch", "(and)", "qwzx 12"));
    }

    @Property(tries = 200, seed = "20261125")
    void caseAndMachineLanguageMakeNoDifference(@ForAll("names") List<String> names) {
        String list = String.join(", ", names);
        Set<String> right = found(list);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(found(list)).isEqualTo(right);
            assertThat(found(list.toLowerCase(Locale.ROOT))).isEqualTo(right);
            assertThat(found(java.text.Normalizer.normalize(list, java.text.Normalizer.Form.NFD))).isEqualTo(right);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property(tries = 500, seed = "20261125")
    void noTypedMedicineVanishes(@ForAll("typed") List<String> typed) {
        String line = String.join(" ", typed);
        MedicineReading reading = ShippedLexicon.MEDICINES.read(line);
        String kept = reading.names().stream().map(MedicineReading.Name::typed).collect(Collectors.joining(" ")) + " "
            + String.join(" ", reading.beside());
        for (String word : line.split("[ ,]+")) {
            assertThat(kept).as("%s: %s", line, reading).contains(word);
        }
    }

    @Provide
    Arbitrary<List<String>> typed() {
        Arbitrary<String> words = Arbitraries.oneOf(
            Arbitraries.of("prednisolone", "methotrexate", "5mg", "tabs", "once a day", "stopped", "not on", "zzyvqol",
                "преднизолон", "and", "cetirizine,", "insulin", "predinsolone"),
            Arbitraries.strings().withCharRange('a', 'z').ofMinLength(1).ofMaxLength(9));
        return words.list().ofMinSize(1).ofMaxSize(8);
    }

    private static List<Found> list(String text) {
        return ShippedLexicon.LABELS.read(text).found();
    }

    @Property(tries = 300, seed = "20261125")
    void aKnownNameStandingAloneIsFoundAsItselfBesideAnything(@ForAll("names") List<String> names,
        @ForAll("more") String more) {
        String name = names.get(0);
        assertThat(list(more + ";\n\n" + name)).as("%s, %s", more, name)
            .anySatisfy(f -> assertThat(f.substance().risk()).isGreaterThanOrEqualTo(risk(name)));
    }

    private static Substance.Risk risk(String name) {
        return ShippedLexicon.SUBSTANCES.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow().risk();
    }
}
