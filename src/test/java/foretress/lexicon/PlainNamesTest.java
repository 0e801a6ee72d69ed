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

    @ParameterizedTest
    @DisplayName("R48: a dye is its family, its colour and its number, in whatever order, tongue and number sign")
    @CsvSource({ "Säurerot 33, ACID RED 33", "Basischblau 99, BASIC BLUE 99", "rojo ácido n.º 33, ACID RED 33",
        "czerwień kwasowa nr 52, ACID RED 52", "Acid Red No. 155, ACID RED 155", "Dispersrot 17, DISPERSE RED 17",
        "H.C. Yellow No. 4, HC YELLOW NO. 4", "verde ácido 25, ACID GREEN 25", "niebieski kwasowy 9, ACID BLUE 9",
        "D&C Red No. 33, ACID RED 33", "Ext. D&C Violet No. 2, ACID VIOLET 43", "D&C Yellow No. 10, ACID YELLOW 3" })
    void aDyeIsItsFamilyColourAndNumber(String written, String meant) {
        assertThat(names("Aqua, " + written + ", Parfum")).contains(meant).hasSize(3);
    }

    @ParameterizedTest
    @DisplayName("R48: a substance is known by its number in the European inventory")
    @CsvSource({ "203-404-7, P-PHENYLENEDIAMINE", "231-765-0, HYDROGEN PEROXIDE", "206-104-4, LEAD ACETATE" })
    void aEuropeanNumberNames(String written, String meant) {
        assertThat(names("Aqua, EINECS " + written + ", Parfum")).contains(meant);
    }

    @ParameterizedTest
    @DisplayName("R48: henna and PPD count in a sentence too; a brow tint that is called henna is none of the plant")
    @CsvSource(delimiter = '|',
        value = { "I mix two cups of henna, the red one, with an egg | LAWSONIA INERMIS LEAF POWDER",
            "henna w proszku, cukier | LAWSONIA INERMIS LEAF POWDER",
            "the packet says ppd in tiny letters | P-PHENYLENEDIAMINE" })
    void inASentenceToo(String written, String meant) {
        assertThat(names(written)).contains(meant);
        assertThat(names("henna do brwi i rzęs\nwoda, gliceryna, resorcinol, parfum")).contains("RESORCINOL")
            .doesNotContain("LAWSONIA INERMIS LEAF POWDER");
    }

    @Test
    @DisplayName("R48: a slash or a dash between blanks parts two names")
    void aSlashAndADashPart() {
        assertThat(names("Persuulfato potásico / persulfato amónico / silicato sódico"))
            .containsExactly("POTASSIUM PERSULFATE", "AMMONIUM PERSULFATE", "SODIUM SILICATE");
        assertThat(names("Agua - Eugennol - Resorcinol")).contains("EUGENOL", "RESORCINOL");
    }

    @ParameterizedTest
    @DisplayName("R48: a word of naming beside an unknown one says what kind that is, and is not in the product by itself")
    @CsvSource({ "ters-butyl peroxde, HYDROGEN PEROXIDE", "tert-butyl peroxyde, HYDROGEN PEROXIDE",
        "bulte de soude, SODIUM HYDROXIDE" })
    void aWordOfNamingIsNoSubstanceBesideAnUnknownOne(String written, String not) {
        LabelReading reading = ShippedLexicon.LABELS.read("Aqua, " + written + ", Parfum");
        assertThat(reading.found()).extracting(found -> found.substance().name()).doesNotContain(not);
        assertThat(reading.unknown()).isNotEmpty();
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
