package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a label says is not in it, and where such a claim ends. */
class ClaimsTest {
    private static List<String> found(String text) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(f -> f.substance().name()).toList();
    }

    @DisplayName("R33: a claim ends where the label goes on with what is in it")
    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "Contains no ammonia but contains lead acetate | LEAD ACETATE",
            "Without ammonia.Lead Acetate, Aqua | LEAD ACETATE", "0% ammonia Lead Acetate | LEAD ACETATE",
            "0% amonia Lead Acetate | LEAD ACETATE", "Free of parabens with p-phenylenediamine | P-PHENYLENEDIAMINE",
            "no ammonia - lead acetate | LEAD ACETATE", "no ammonia – lead acetate | LEAD ACETATE",
            "sin amoníaco/PPD | P-PHENYLENEDIAMINE", "sin amoníaco pero contiene acetato de plomo | LEAD ACETATE",
            "sans ammoniaque mais avec acétate de plomb | LEAD ACETATE", "ohne Ammoniak, mit Bleiacetat | LEAD ACETATE",
            "ohne Ammoniak aber mit Bleiacetat | LEAD ACETATE", "bez amoniaku, ale zawiera octan ołowiu | LEAD ACETATE",
            "senza ammoniaca ma con acetato di piombo | LEAD ACETATE",
            "Free from harsh parabens p-phenylenediamine | P-PHENYLENEDIAMINE",
            "no ammonia, Lead Acetate, Aqua | LEAD ACETATE" })
    void whatFollowsIsFound(String label, String substance) {
        assertThat(found(label)).as(label).contains(substance);
    }

    @DisplayName("R48: behind a word that nearly denies a name is neither found nor gone: unknown, with what it may be")
    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "Woda, Parfum. Beez amoniaku. | AMMONIA", "farba domowa bz amoniaku | AMMONIA",
            "tonalizzante sekaz ammoniaca | AMMONIA", "Agua. Nt contiene parabenos | PARABENS",
            "Woda; bez ocatnu ołowiu | LEAD COMPOUND", "Agua. Libre dee formaldehído | FORMALDEHYDE",
            "Aqua. Free of silicones, lanolin anw formaldehyde. | FORMALDEHYDE" })
    void behindADamagedDenialNobodyCanTell(String label, String maybe) {
        LabelReading reading = ShippedLexicon.LABELS.read(label);
        assertThat(reading.found()).as(label).noneMatch(found -> found.substance().name().equals(maybe));
        assertThat(reading.unknown()).as(label).anyMatch(
            unknown -> unknown.near().stream().anyMatch(substance -> substance.name().equals(maybe)));
        assertThat(reading.allSure()).as(label).isFalse();
    }

    @DisplayName("R33: a claimed absence is not found, in any of the six languages")
    @ParameterizedTest
    @ValueSource(strings = { "Contains no copper sulfate and no silver nitrate", "means no sodium hydroxide",
        "zero lead",
        "free from P.P.D., resorcinol and ammonia", "no contiene persulfatos ni agua oxigenada ni amoníaco",
        "n'est pas une coloration : ni peroxyde, ni p-phénylènediamine, ni résorcine", "kein Silbernitrat",
        "senza ammoniaca né p-fenilendiammina, senza acetato di piombo", "niente argento, niente p-fenilendiammina",
        "nie zawiera ołowiu ani bizmutu", "SlN AM0NIACO", "ohne Persulfate, ohne H2O2, ohne Ammoniak",
        "Nie zawiera PPD, soli metali, amoniaku\nSkład:", "Wolna od: parabenów, MIT/CMIT, donorów formaldehydu\nSkład:",
        "0 % : parabènes, formol, phénoxyéthanol\nIngrédients :", "privo di ammoniaca e resorcina" })
    void whatIsClaimedAbsentIsNot(String claim) {
        assertThat(found(claim)).as(claim).isEmpty();
        assertThat(found(claim + "\nAqua, m-aminophenol")).as(claim).contains("M-AMINOPHENOL");
    }

    @DisplayName("R34: a damaged number is unknown, or read as the one it alone may be, and does not pass for an amount")
    @ParameterizedTest
    @ValueSource(strings = { "7772-99-B", "301-042", "12330-8" })
    void aDamagedNumberIsNoAmount(String number) {
        assertThat(ShippedLexicon.LABELS.read("Aqua, " + number).allSure()).as(number).isFalse();
        assertThat(ShippedLexicon.LABELS.read("Aqua 12 %, Resorcinol 1-2 %").unknown()).isEmpty();
    }

    @DisplayName("R34: an unknown word that speaks of a metal is a trace at least")
    @ParameterizedTest
    @ValueSource(strings = { "cuprates", "ferric nonsense", "copper peptidase", "cobaltous thing", "nickelwasser",
        "bismuthyl", "argentic mix", "plumbic mix", "manganic mix", "chromic mix", "mercurial mix" })
    void aMetalsStemIsATrace(String word) {
        LabelReading reading = ShippedLexicon.LABELS.read("Aqua, " + word);
        Stream<Substance> all = Stream.concat(reading.found().stream().map(f -> f.substance()),
            reading.unknown().stream().flatMap(u -> u.near().stream()));
        assertThat(all).as(word).anySatisfy(s -> assertThat(s.kind()).isEqualTo("metal-salt"));
    }

    @DisplayName("R48: a group's word adds nothing where the list names a member as grave, and counts where it does not")
    @Test
    void groups() {
        assertThat(found("Potassium Persulfate, Aqua. Contains persulfates")).containsExactly("POTASSIUM PERSULFATE",
            "AQUA");
        assertThat(found("Contains persulfates")).containsExactly("PERSULFATES");
        assertThat(found("Black henna hair powder: Lawsonia Inermis, Aqua, Citric Acid"))
            .doesNotContain("HENNA KIND NOT STATED");
        assertThat(found("Aqua, Glycerin, black henna, Citric Acid")).contains("HENNA KIND NOT STATED");
    }

    @DisplayName("R48: the head word of a longer name is not that substance")
    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "PEG-27 Lanolin | LANOLIN", "Woad | AQUA", "Disperse Blue 1 | ACID BLUE 9",
            "Disperse Blue 14 | ACID BLUE 9",
            "sodium hydrosulfite | SODIUM THIOSULFATE", "thioglycerin | GLYCERIN",
            "copper tripeptide | COPPER COMPOUND",
            "cream peroxide | UREA PEROXIDE", "roślin | COLOPHONIUM",
            "N,N-bis(β-hydroxyethyl)-p-phenylenediamine sulphate | HYDROXYETHYL-P-PHENYLENEDIAMINE SULFATE" })
    void headWords(String label, String not) {
        assertThat(found("Aqua dest., " + label)).as(label).doesNotContain(not.equals("AQUA") ? "-" : not);
        assertThat(found(label)).as(label).doesNotContain(not);
    }

    @DisplayName("R48: a name broken off after meta is not the shorter one")
    @Test
    void metaOnALineOfItsOwn() {
        assertThat(found("Aqua, sodium meta\nbisulfite")).containsExactly("AQUA", "SODIUM METABISULFITE");
    }

    @DisplayName("R48: a salt is the same in every tongue and order")
    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "ammonio persolfato | AMMONIUM PERSULFATE", "persolfato di ammonio | AMMONIUM PERSULFATE",
            "nadsiarczan amonu | AMMONIUM PERSULFATE", "Dinatriumpyrophosphat | DISODIUM PYROPHOSPHATE",
            "cloruro ferrico | FERRIC CHLORIDE", "chlorek żelaza(III) | FERRIC CHLORIDE",
            "cynian sodu | SODIUM STANNATE",
            "clorhidrato de 2,4-diaminofenoxietanol | '2,4-DIAMINOPHENOXYETHANOL HCL'", "HC Rot Nr. 3 | HC RED NO. 3",
            "kwas etydronowy | ETIDRONIC ACID", "Etidronsäure | ETIDRONIC ACID", "solfato di rame | COPPER SULFATE",
            "2-ammino-3-idrossipiridina | 2-AMINO-3-HYDROXYPYRIDINE",
            "2,5-Toluenediamine Sulphate | 'TOLUENE-2,5-DIAMINE SULFATE'" })
    void inEveryTongue(String written, String name) {
        assertThat(found(written)).as(written).containsExactly(name.replace("'", ""));
    }
}
