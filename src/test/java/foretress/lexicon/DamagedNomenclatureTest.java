package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.lexicon.Substance.Risk;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Damaged words of naming, each by itself: what they are mended to, and what is left as it stands. */
@DisplayName("R48: damaged words of chemical naming in six tongues")
@Execution(ExecutionMode.CONCURRENT)
class DamagedNomenclatureTest {
    private static final DamagedNomenclature FEW = few("ammonium persulfate", "sodium chlorite", "copper gluconate",
        "sodium sulfide", "sodium sulfite", "phosphoric acid", "etidronic acid", "2-methylresorcinol",
        "cocamidopropyl betaine", "benzisothiazolinone", "basic red 51");

    private static DamagedNomenclature few(String... names) {
        Map<String, Substance> byKey = new HashMap<>();
        Arrays.stream(names).forEach(name -> byKey.put(key(name), new Substance(name, Optional.empty(), List.of(),
            "any", Risk.NONE, "", "", "test", "memory")));
        return new DamagedNomenclature(byKey);
    }

    private static String key(String name) {
        return Nomenclature.key(words(name));
    }

    private static List<String> words(String name) {
        return LabelToken.of(name).stream().map(LabelToken::folded).toList();
    }

    private static String read(String damaged) {
        List<String> words = words(damaged);
        return FEW.read(words, words.stream().map(DamagedNomenclature::mended).toList()).map(Substance::name)
            .orElse("-");
    }

    @ParameterizedTest
    @CsvSource({ "persulfto, persulfato", "sodo, sodio", "amonnio, ammonio", "prsolffato, persolfato", "ed, de",
        "kupferlguconat, kupfergluconat", "ntriumsulfit, natriumsulfit", "natriumuslfid, natriumsulfid" })
    void aWordIsMendedWhereItCanBeNoOther(String damaged, String mended) {
        assertThat(Nomenclature.key(List.of(DamagedNomenclature.mended(damaged), "amonio")))
            .isEqualTo(Nomenclature.key(List.of(mended, "amonio")));
    }

    @ParameterizedTest
    @ValueSource(strings = { "sulfate", "de", "ii", "25", "xyz", "chlorate", "perfume", "agua" })
    void everyOtherWordIsLeftAsItStands(String word) {
        assertThat(DamagedNomenclature.mended(word)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({ "persulfto de amonio, ammonium persulfate", "nadsiarczn amonu, ammonium persulfate",
        "kupferlguconat, copper gluconate", "Natriumuslfid, sodium sulfide", "Gluconatf ed cobre, copper gluconate",
        "ácido etidrnico, etidronic acid", "kwas etidronwy, etidronic acid",
        "2-metilresorcniola, 2-methylresorcinol", "cocmidopropil betína, cocamidopropyl betaine",
        "bnzistiazolinone, benzisothiazolinone", "Ross basico 51, basic red 51" })
    void aNameWithSlipsIsRead(String damaged, String meant) {
        assertThat(read(damaged)).as(damaged).isEqualTo(meant);
    }

    @ParameterizedTest
    @DisplayName("another homologue, another salt, another place or another number is not the name it resembles")
    @ValueSource(strings = { "2-etilresorcina", "3-metilresorcina", "clorato sodico", "basic red 57", "rosso basico 5",
        "laurilpropil betaina", "sulfato de amonio", "betaine", "soda" })
    void aNeighbourIsNot(String other) {
        assertThat(read(other)).as(other).isEqualTo("-");
    }

    @Test
    void aNameThatIsRightIsNoDamagedOne() {
        assertThat(read("persulfato de amonio")).isEqualTo("-");
        assertThat(key("persulfato de amonio")).isEqualTo(key("ammonium persulfate"));
    }

    @Test
    void noMoreThanFiveWordsAreLookedAt() {
        assertThat(DamagedNomenclature.mayBe(5)).isTrue();
        assertThat(DamagedNomenclature.mayBe(6)).isFalse();
    }

    @ParameterizedTest
    @DisplayName("one key for a name in every tongue")
    @CsvSource({ "siarczanu sodu, sodium sulfate", "octanu ołowiu, lead acetate", "ác. tioglicólico, thioglycolic acid",
        "kw. etidronowy, kwas etidronowy", "amarillo HC 2, HC Yellow 2", "azul básico 99, basic blue 99",
        "rosso basico 2, basic red 2", "Dinatriumpyrophosphat, disodium pyrophosphate",
        "Kupfergluconat, copper gluconate", "iron(II) sulfate, ferrous sulfate", "cuprous chloride, copper(I) chloride",
        "wodny roztwór amoniaku, amoniaku", "Natronsalzlösung, Natronsalz",
        "'toluol-2,5-diamin', 'toluene-2,5-diamine'" })
    void oneKeyForEveryTongue(String one, String other) {
        assertThat(key(one)).as(one).isNotEmpty().isEqualTo(key(other));
    }

    @ParameterizedTest
    @DisplayName("and another one for another substance")
    @CsvSource({ "sulfito de sodio, sodium sulfate", "sulfuro de sodio, sodium sulfite",
        "disodium phosphate, sodium phosphate", "ferric sulfate, ferrous sulfate", "m-aminofenol, p-aminophenol",
        "2-amino-3-hydroxypyridine, 3-amino-2-hydroxypyridine", "basic blue 9, basic blue 99" })
    void anotherKeyForAnotherSubstance(String one, String other) {
        assertThat(key(one)).isNotEqualTo(key(other));
    }

    @ParameterizedTest
    @DisplayName("too few letters have no key")
    @ValueSource(strings = { "abc", "sodio", "de", "no 5" })
    void tooFewLettersHaveNoKey(String name) {
        assertThat(key(name)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({ "hojas de indigo, indigo", "Walnussschalen, walnuss", "cásara de nuez, nuez", "liść henny, henny",
        "indigo, ''", "foglie, ''" })
    void aPlantIsNamedByItsPart(String written, String plant) {
        assertThat(PlantParts.plant(words(written).stream().map(PlantParts::mended).toList())).isEqualTo(plant);
    }

    @Test
    @DisplayName("a salt of another tongue is the neighbour of the one that differs by its salt alone")
    void neighboursInOtherTongues() {
        assertThat(Neighbours.of("peroxydedemagnesium", false)).contains("hydroxydedemagnesium");
        assertThat(Neighbours.of("natriumsulfit", false)).contains("natriumsulfid", "natriumsulfat");
        assertThat(Neighbours.of("sulfitodesodio", false)).contains("sulfatodesodio").doesNotContain("sulfitedesodio");
        assertThat(Neighbours.ofSound("metilresorsinol")).contains("etilresorsinol");
    }
}
