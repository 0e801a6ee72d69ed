package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names as they stand on boxes at the market and in the kitchen, in six languages. */
class PlainNamesTest {
    private static List<String> names(String text) {
        return ShippedLexicon.LABELS.read(text).found().stream().map(f -> f.substance().name())
            .collect(Collectors.toList());
    }

    @ParameterizedTest
    @DisplayName("R51: a plant is known by any of its parts, in six languages")
    @CsvSource({ "walnut shell powder, JUGLANS REGIA SHELL EXTRACT", "Walnussschalen, JUGLANS REGIA SHELL EXTRACT",
        "cáscara de nuez, JUGLANS REGIA SHELL EXTRACT", "coques de noix, JUGLANS REGIA SHELL EXTRACT",
        "łupiny orzecha, JUGLANS REGIA SHELL EXTRACT", "mallo di noce, JUGLANS REGIA SHELL EXTRACT",
        "Indigoblätter, INDIGOFERA TINCTORIA LEAF POWDER", "feuilles d'indigo, INDIGOFERA TINCTORIA LEAF POWDER",
        "hojas de índigo en polvo, INDIGOFERA TINCTORIA LEAF POWDER", "liście indygo, INDIGOFERA TINCTORIA LEAF POWDER",
        "foglie di indaco, INDIGOFERA TINCTORIA LEAF POWDER", "Krappwurzelpulver, RUBIA TINCTORUM ROOT POWDER",
        "racine de garance, RUBIA TINCTORUM ROOT POWDER", "Kamillenblüten, CHAMOMILLA RECUTITA FLOWER EXTRACT",
        "Ekstrakt z pokrzywy, URTICA DIOICA LEAF EXTRACT", "Brennnesselextrakt, URTICA DIOICA LEAF EXTRACT" })
    void aPlantIsKnownByItsParts(String written, String meant) {
        assertThat(names("Aqua, " + written + ", Parfum")).contains(meant);
    }

    @ParameterizedTest
    @DisplayName("R48: dissolved, in the old words of the trade, or with the family after the colour, it is the same substance")
    @CsvSource({ "Ammoniaklösung, AMMONIA", "Hyposulfite de soude, SODIUM THIOSULFATE",
        "sulfite de soude, SODIUM SULFITE", "persulfate de potasse, POTASSIUM PERSULFATE",
        "Rosso basico 51, BASIC RED 51", "Eisenoxid schwarz, IRON OXIDES (BLACK)",
        "oxyde de fer noir, IRON OXIDES (BLACK)",
        "Azul ultramar, ULTRAMARINES", "aldehyd glutarowy, GLUTARAL", "Metyloizotiazolinon, METHYLISOTHIAZOLINONE",
        "Diazolidinylharnstoff, DIAZOLIDINYL UREA" })
    void theSameInOtherWords(String written, String meant) {
        assertThat(names("Aqua, " + written + ", Parfum")).contains(meant);
    }

    @Test
    @DisplayName("R48: a word that a line breaks is read whole in every tongue")
    void aBrokenWordIsWhole() {
        assertThat(names("Aqua, Phosphate dis-\nodique, Parfum")).contains("DISODIUM PHOSPHATE");
    }

    @Test
    @DisplayName("R48: a henna of some kind in the title names nothing beside the list that follows")
    void aTitleSaysNothingBesideTheList() {
        assertThat(
            names("RAVEN *Black Henna* 6 x 10 g\nComposition - Henna powder, Para-phenylenediamine 12 %, Citric acid"))
            .contains("LAWSONIA INERMIS LEAF POWDER", "P-PHENYLENEDIAMINE").doesNotContain("HENNA KIND NOT STATED");
    }

    @Test
    @DisplayName("R48: each of two preservatives sold as a mixture is named")
    void aMixtureNamesBoth() {
        assertThat(names("Aqua, Methylchloroisothiazolinone (and) Methylisothiazolinone"))
            .contains("METHYLCHLOROISOTHIAZOLINONE", "METHYLISOTHIAZOLINONE");
    }
}
