package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two substances are never made one because their names are close. */
@Execution(ExecutionMode.CONCURRENT)
class NearSubstancesTest {
    private static final int NEAR = 3 * LookAlikes.SLIP;
    private static final Map<String, Substance> KEYS = keys();

    private static Map<String, Substance> keys() {
        Map<String, Substance> keys = new HashMap<>();
        for (Substance s : ShippedLexicon.SUBSTANCES) {
            Stream.concat(Stream.of(s.name()), s.otherNames().stream()).forEach(name -> {
                String key = String.join("", LabelToken.of(name).stream().map(LabelToken::folded).toList());
                if (key.length() > 4) {
                    keys.merge(key, s, (a, b) -> a.risk().compareTo(b.risk()) >= 0 ? a : b);
                }
            });
        }
        return keys;
    }

    private static List<String> read(String text) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(f -> f.substance().name()).toList();
    }

    /** All near pairs of the lexicon: each is read as itself; one letter lost from one is never read as the other. */
    @Test
    void noNearPairIsMerged() {
        List<Letterprint> all = KEYS.keySet().stream().map(Letterprint::of).toList();
        int pairs = 0;
        for (Letterprint first : all) {
            for (Letterprint second : all) {
                if (!first.mayBeWithin(second, NEAR)) {
                    continue;
                }
                String one = first.key();
                String other = second.key();
                // A damaged word for a group ("phenylenediamines") may be read as a member, which is as grave.
                boolean different = !KEYS.get(one).name().equals(KEYS.get(other).name())
                    && !Groups.isGroupOf(KEYS.get(one).name(), List.of(KEYS.get(other).name()));
                if (different && LookAlikes.between(one, other, NEAR) <= NEAR) {
                    pairs++;
                    neverTheOther(one, other);
                }
            }
        }
        System.out.printf("%d near pairs of %d spellings tried%n", pairs, all.size());
        assertThat(pairs).isGreaterThan(100);
    }

    private static void neverTheOther(String one, String other) {
        assertThat(read(one)).as("%s is not %s", one, other).doesNotContain(KEYS.get(other).name());
        for (int i = 0; i < one.length(); i++) {
            String lost = one.substring(0, i) + one.substring(i + 1);
            boolean another =
                !KEYS.containsKey(lost) && LookAlikes.between(lost, one, NEAR) <= LookAlikes.between(lost, other, NEAR);
            if (another) {
                assertThat(read(lost)).as("%s, from %s, is not %s", lost, one, other)
                    .doesNotContain(KEYS.get(other).name());
            }
        }
    }

    /** Homologues, isomers, salts and bases that are not in the list: the neighbour in the list is not found for them. */
    @ParameterizedTest
    @CsvSource({ "2-Ethylresorcinol, 2-METHYLRESORCINOL", "Toluene-2,4-Diamine, 'TOLUENE-2,5-DIAMINE'",
        "Toluene-2,6-Diamine Sulfate, 'TOLUENE-2,5-DIAMINE SULFATE'",
        "4-Bromoresorcinol, 4-CHLORORESORCINOL", "Ethylparaben, METHYLPARABEN", "Sodium Chlorate, SODIUM CHLORITE",
        "Sodium Nitrite, SODIUM SULFITE",
        "Silver Lactate, SILVER ACETATE", "Calcium Thioglycolate, AMMONIUM THIOGLYCOLATE",
        "Potassium Hydroxide, SODIUM HYDROXIDE",
        "Diethanolamine, ETHANOLAMINE", "Sodium Bisulfate, SODIUM BISULFITE", "Ferric Sulfate, FERROUS SULFATE",
        "HC Red No. 8, HC RED NO. 3",
        "Polyquaternium-9, POLYQUATERNIUM-10", "Myristyl Lactate, MYRISTYL ALCOHOL", "2-Naphthol, 1-NAPHTHOL",
        "Cystine, CYSTEINE", "Potassium Perborate, SODIUM PERBORATE" })
    void aNeighbourOutsideTheListIsNotTheOneInside(String written, String not) {
        assertThat(read(written)).as(written).doesNotContain(not);
    }
}
