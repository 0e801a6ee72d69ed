package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.LabelReading.Found;
import foretress.lexicon.LabelReading.Sureness;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists as a machine reads them from a crumpled box. */
@Execution(ExecutionMode.CONCURRENT)
class DamagedLabelsTest {

    private static LabelReading read(String text) {
        return ShippedLexicon.LABELS.read(text);
    }

    private static Set<String> names(String text) {
        return read(text).found().stream().map(f -> f.substance().name())
            .collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @DisplayName("R48: what looks alike is read, and said to be read so: 5 and S, 8 and B, 9 and g, 2 and Z, cl and d, rn and m")
    @CsvSource(delimiter = '|',
        value = { "5odium 5ulfite | SODIUM SULFITE", "P0TA55IUM PER5ULFATE | POTASSIUM PERSULFATE",
            "8enzyl Alcohol | BENZYL ALCOHOL",
            "2-AMINO-4-HYDROXYETHYLAMINOANI5OLE SULFATE | 2-AMINO-4-HYDROXYETHYLAMINOANISOLE SULFATE",
            "Z-Methylresorcinol | 2-METHYLRESORCINOL", "Toluene-2,S-Diamine | TOLUENE-2,5-DIAMINE",
            "Hydro9en Peroxide | HYDROGEN PEROXIDE", "arnmonium thiogIycolate | AMMONIUM THIOGLYCOLATE",
            "Cetrimonium Chloricle | CETRIMONIUM CHLORIDE", "4-Dhlororesorcinol | 4-CHLORORESORCINOL",
            "Phenoxyethan0l | PHENOXYETHANOL", "Sodium Hyclroxide | SODIUM HYDROXIDE",
            "Socliurn Silicate | SODIUM SILICATE", "Leacl Acetate | LEAD ACETATE", "Si1ver Nitrate | SILVER NITRATE" })
    void lookAlikesAreReadAndSaidToBe(String written, String meant) {
        Found found = read("Parfum, " + written + ", Linalool").found().get(1);
        assertThat(found.substance().name()).as(written).isEqualTo(meant);
        assertThat(found.sureness()).as(written).isEqualTo(Sureness.SPELLING_SLIP);
    }

    @ParameterizedTest
    @DisplayName("R48: a damaged CAS number is mended by its check digit, where one known number alone agrees")
    @CsvSource({ "106-55-3, P-PHENYLENEDIAMINE", "301-042, LEAD ACETATE", "3011-04-2, LEAD ACETATE",
        "301-O4-2, LEAD ACETATE",
        "7761-B8-8, SILVER NITRATE", "776l-88-8, SILVER NITRATE", "7761-88-88, SILVER NITRATE",
        "813-39-4, BISMUTH CITRATE" })
    void aDamagedNumberIsMended(String written, String meant) {
        Found found = read("Aqua, " + written + ", Parfum").found().stream()
            .filter(f -> f.written().equals(written)).findFirst().orElseThrow();
        assertThat(found.substance().name()).as(written).isEqualTo(meant);
        assertThat(found.sureness()).as(written).isEqualTo(Sureness.SPELLING_SLIP);
    }

    @ParameterizedTest
    @DisplayName("R48: a number that could be several, or is nobody's, stays unknown; a sound one is never mended")
    @ValueSource(strings = { "555-55-5", "9999-99-9", "999-04-9" })
    void anotherNumberStaysUnknown(String written) {
        LabelReading reading = read("Aqua, " + written + ", Parfum");
        assertThat(names("Aqua, " + written + ", Parfum")).containsExactly("AQUA", "PARFUM");
        assertThat(reading.unknown()).extracting(LabelReading.Unknown::written).contains(written);
    }

    @Test
    @DisplayName("R48: whichever digit of a known number is lost, doubled or another, it is never silently something else")
    void noDamagedNumberIsSilentlyAnother() {
        for (Substance substance : ShippedLexicon.SUBSTANCES) {
            if (substance.cas().isPresent()) {
                String cas = substance.cas().get().number();
                damaged(cas).forEach(number -> assertThat(read("Aqua, " + number + ", Parfum"))
                    .as("%s for %s", number, cas).satisfies(reading -> assertThat(mentions(reading, number)).isTrue()));
            }
        }
    }

    /** Read for sure as another number's substance, it is another number; else it is found with a slip, or unknown. */
    private static boolean mentions(LabelReading reading, String number) {
        return reading.unknown().stream().anyMatch(u -> u.written().contains(number)) || reading.found().stream()
            .anyMatch(f -> f.written().equals(number)
                && (f.sureness() == Sureness.SPELLING_SLIP || f.substance().cas().get().number().equals(number)));
    }

    private static List<String> damaged(String cas) {
        char first = cas.charAt(0);
        char other = (char) ('0' + (first - '0') % 9 + 1);
        return List.of(other + cas.substring(1), first + cas,
            cas.substring(0, cas.length() - 3) + cas.substring(cas.length() - 2));
    }

    @ParameterizedTest
    @DisplayName("R48: a Colour Index number of four digits or six is the known one it alone may be")
    @CsvSource({ "CI 774499, IRON OXIDES (BLACK)", "CI 7749, ", "CI 7700, " })
    void aColourNumberIsTheOneItAloneMayBe(String written, String meant) {
        Set<String> names = names("Talc, " + written + ", Parfum");
        names.removeAll(Set.of("TALC", "PARFUM"));
        assertThat(names).as(written).isEqualTo(meant == null ? Set.of() : Set.of(meant));
    }

    @ParameterizedTest
    @DisplayName("R48: a lost hyphen, and an amount stuck to a name")
    @CsvSource(delimiter = '|',
        value = { "pPhenylenediamine | P-PHENYLENEDIAMINE", "2Methylresorcinol | 2-METHYLRESORCINOL",
            "4 Amino 2 hydroxytoluene | 4-AMINO-2-HYDROXYTOLUENE", "mAminophenol | M-AMINOPHENOL",
            "ammonium thioglycolate9% | AMMONIUM THIOGLYCOLATE", "hydrogen peroxide6 % | HYDROGEN PEROXIDE",
            "resorcinol0.5% | RESORCINOL" })
    void lostHyphensAndAmounts(String written, String meant) {
        assertThat(names("Aqua, " + written + ", Parfum")).as(written).contains(meant);
    }

    @ParameterizedTest
    @DisplayName("R48: a slip in the word of a salt or an acid, in six tongues")
    @CsvSource(delimiter = '|', value = { "toi9licolato de amonio | AMMONIUM THIOGLYCOLATE",
        "ácido fo5fóricoo | PHOSPHORIC ACID", "estannatto de sodio | SODIUM STANNATE",
        "persoIfato di amonnio | AMMONIUM PERSULFATE", "nadslarczzan amonu | AMMONIUM PERSULFATE",
        "acetato de plmmo | LEAD ACETATE" })
    void aSlipInAnotherTongue(String written, String meant) {
        assertThat(names("Parfum, " + written + ", Linalool")).as(written).contains(meant);
    }

    @ParameterizedTest
    @DisplayName("R48: none of the kinds that were once invented comes back")
    @CsvSource(delimiter = '|', value = {
        "Black henna powder: Lawsonia Inermis Leaf Powder, Indigofera Tinctoria Leaf Powder | HENNA KIND NOT STATED",
        "Aqua, PEG-75 Lanolin, Parfum | LANOLIN", "Isatis Tinctoria (Woad) Leaf Powder, Talc | AQUA",
        "Aqua, Disperse Blue 1, Parfum | ACID BLUE 9",
        "Aqua, sodium hydrosulfite, Parfum | SODIUM THIOSULFATE",
        "Aqua, Sodium Meta- bisulfite, Parfum | SODIUM BISULFITE",
        "Aqua, thioglycerin, Parfum | GLYCERIN", "Aqua, copper tripeptide-1, Parfum | COPPER COMPOUND",
        "Aqua, copper lysinamide, Parfum | COPPER COMPOUND",
        "Aqua, PEG-40 Hydro9enated Castor Oil, Parfum | RICINUS COMMUNIS SEED OIL" })
    void nothingIsInvented(String text, String invented) {
        assertThat(names(text)).as(text).doesNotContain(invented);
    }

    @ParameterizedTest
    @DisplayName("R48: a colour number one digit off, or with damaged letters before it, is the one known number it can be")
    @CsvSource({ "CI 73288, CHROMIUM OXIDE GREENS", "CI 77097, ULTRAMARINES", "Cy 19140, ACID YELLOW 23",
        "IC 16035, CURRY RED" })
    void aDamagedColourNumberIsMended(String written, String meant) {
        assertThat(names("Aqua, " + written + ", Parfum")).contains(meant);
        assertThat(read("Aqua, " + written + ", Parfum").allSure()).isFalse();
    }

    @ParameterizedTest
    @DisplayName("R48: a colour number that is another colorant's is never mended into a known one")
    @ValueSource(strings = { "CI 77489", "CI 15865", "CI 42080" })
    void aSoundColourNumberIsNotMended(String written) {
        assertThat(read("Aqua, " + written).found()).noneMatch(f -> f.sureness() == Sureness.SPELLING_SLIP);
    }

    @ParameterizedTest
    @DisplayName("R48: a number without its letters, half a number, or a connecting word as an item is unknown, not an amount")
    @ValueSource(strings = { "C 77499", "I 77288", "174", "62-44-", "83-72-w", "1185-e57-5", "nel", "M" })
    void whatIsLeftOfANumberIsUnknown(String written) {
        assertThat(read("Aqua, " + written + ", Parfum").allSure()).as(written).isFalse();
    }

    @ParameterizedTest
    @DisplayName("R48: the first letter of a name may be the slip, unless it is a place in the molecule")
    @CsvSource({ "eraniol, GERANIOL", "Iinalool, LINALOOL", "ooumarin, COUMARIN", "arfum, PARFUM" })
    void theFirstLetterMayBeTheSlip(String written, String meant) {
        assertThat(names("Aqua, " + written + ", Glycerin")).contains(meant);
    }
}
