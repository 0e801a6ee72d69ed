package foretress.lexicon;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.MedicineReading.Name;
import foretress.lexicon.MedicineReading.Sureness;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@Isolated("the default locale of the machine is changed for a moment")
class MedicineLexiconTest {

    private static MedicineReading read(String typed) {
        return ShippedLexicon.MEDICINES.read(typed);
    }

    private static Name one(String typed) {
        MedicineReading reading = read(typed);
        assertThat(reading.names()).as(typed).hasSize(1);
        return reading.names().get(0);
    }

    /** LaBerge 2011: 6.0 % of PPD patients reacted to sulfa drugs. */
    @Test
    void sulfamethoxazoleIsASulfonamideThatCrossReacts() {
        assertThat(one("sulfamethoxazole").kinds()).contains("sulfonamide-antimicrobial");
        assertThat(one("sulfamethoxazole").effects()).contains("cross-reacts-ppd");
    }

    /** LaBerge 2011: benzocaine 7.5 %; lidocaine is an amide (structure, from memory). */
    @Test
    void benzocaineIsFlaggedLidocaineIsNot() {
        assertThat(one("benzocaine").effects()).contains("cross-reacts-ppd");
        assertThat(one("lidocaine").effects()).doesNotContain("cross-reacts-ppd");
        assertThat(one("lignocaine").kinds()).containsExactly("amide-local-anaesthetic");
    }

    /** Chemistry (from memory): iron by mouth is no metal on the hair. */
    @Test
    void ironTabletsAreAnIronSupplementAndNothingElse() {
        assertThat(one("ferrous sulphate tablets").kinds()).containsExactly("iron-supplement");
        assertThat(one("iron tablets").kinds()).containsExactly("iron-supplement");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Prednisolone 5mg tabs | systemic-corticosteroid", "PREDNISOLONE | systemic-corticosteroid",
        "prednisolone5mg | systemic-corticosteroid",
        "prednisolone-5mg | systemic-corticosteroid", "prednisolona 5 mg al día | systemic-corticosteroid",
        "Prednisolon Tabletten | systemic-corticosteroid",
        "prednizolon | systemic-corticosteroid", "prednison | systemic-corticosteroid",
        "prednisona | systemic-corticosteroid", "steroid tablets | systemic-corticosteroid",
        "cétirizine | antihistamine", "cetirizina | antihistamine", "Cetyryzyna | antihistamine",
        "hidroxizina | antihistamine", "hydroksyzyna | antihistamine",
        "Metotrexato 15 mg semanal | cytotoxic-chemotherapy", "metotreksat | immunosuppressant",
        "Méthotrexate | immunosuppressant",
        "ciclosporina | immunosuppressant", "cyklosporyna | immunosuppressant", "cyclosporine | immunosuppressant",
        "hidroxicloroquina | immunosuppressant", "hydroksychlorochina | immunosuppressant",
        "ácido acetilsalicílico | antiplatelet", "acide acétylsalicylique | antiplatelet",
        "Acetylsalicylsäure | antiplatelet", "aspirina | antiplatelet", "warfaryna | anticoagulant",
        "warfarina | anticoagulant",
        "levotiroxina sódica | thyroid-drug", "Lewotyroksyna | thyroid-drug", "L-thyroxine | thyroid-drug",
        "levothyroxine 50 mcg every morning | thyroid-drug",
        "salbutamol inhaler | asthma-marker", "St John's wort | photosensitiser", "5-FU | cytotoxic-chemotherapy",
        "insulin pen | diabetes-drug",
        "adrenaline pen | anaphylaxis-marker", "minoxidil 5% foam | topical-scalp-treatment",
        "frusemide | photosensitiser", "mycophenolate mofetil | immunosuppressant",
        "clobetasol propionate cream | topical-corticosteroid", "Clobetasolum | topical-corticosteroid",
        "beta blockers | beta-blocker" })
    void spellingsOfPeople(String typed, String kind) {
        Name name = one(typed);
        assertThat(name.kinds()).as(typed).contains(kind);
        assertThat(name.sureness()).as(typed).isEqualTo(Sureness.NAME);
    }

    @ParameterizedTest
    @CsvSource({ "predinsolone, prednisolone", "prednisalone, prednisolone", "methotraxate, methotrexate",
        "cetrizine, cetirizine", "azathiaprine, azathioprine",
        "hydroxycloroqine, hydroxychloroquine", "isotretinion, isotretinoin", "clobetesol, clobetasol",
        "adalimumb, adalimumab", "warferin, warfarin",
        "levothyroxene, levothyroxine sodium", "salbutomol, salbutamol", "ramiprl, ramipril",
        "doxycyclin, doxycycline" })
    void slipsAreForgiven(String typed, String meant) {
        assertThat(one(typed).rows()).as(typed).extracting(MedicineRow::name).contains(meant);
    }

    /** Names that are often confused (common practice, from memory): the second must never be read as the first. */
    @ParameterizedTest
    @CsvSource({ "hydroxyzine, hydralazine", "promethazine, promazine", "chlorpromazine, chlorpropamide",
        "ciclosporin, cycloserine", "penicillamine, penicillin",
        "clomifene, clomipramine", "clotrimazole, clonazepam", "cabazitaxel, carbimazole", "metolazone, metronidazole",
        "lamotrigine, lamivudine",
        "fluoxetine, fluvoxamine", "fluoxetine, duloxetine", "propranolol, propofol", "tamoxifen, tamsulosin",
        "azathioprine, azithromycin", "daunorubicin, dactinomycin",
        "prednisone, primidone", "quinine, quetiapine", "cyclophosphamide, cyclopentolate",
        "methotrexate, metoclopramide", "tiotropium, trospium",
        "levodopa, levomepromazine", "levothyroxine, levocarnitine", "allopurinol, haloperidol",
        "sulfadiazine, sulfasalazine", "clonidine, clozapine", "clonidine, clonazepam" })
    void aLookAlikeIsNotTheMedicine(String one, String other) {
        List<String> otherNames =
            read(other).names().stream().flatMap(n -> n.rows().stream()).map(MedicineRow::name).toList();
        assertThat(otherNames).as(other).doesNotContain(one);
        List<String> names = read(one).names().stream().flatMap(n -> n.rows().stream()).map(MedicineRow::name).toList();
        assertThat(names).as(one).doesNotContain(other);
    }

    @Test
    void prednisoneForPrednisoloneMattersNotForBothMeanTheSame() {
        assertThat(one("prednisone").kinds()).isEqualTo(one("prednisolone").kinds());
    }

    @Test
    void noListedOtherNameIsReadAsAMedicineWeKnow() throws IOException {
        List<String> others = Files.readAllLines(Path.of("src/main/knowledge/lexicon/look-alikes.csv")).stream().skip(1)
            .map(line -> line.split(",")[0]).toList();
        assertThat(others).hasSizeGreaterThan(200).allSatisfy(name -> {
            assertThat(one(name).sureness()).as(name).isNotEqualTo(Sureness.SPELLING_SLIP);
            assertThat(one(name).rows()).as(name).allMatch(row -> isCalled(row, name));
        });
    }

    private static boolean isCalled(MedicineRow row, String name) {
        return row.name().contains(name) || row.otherNames().contains(name);
    }

    @Test
    void aSlipInAnotherMedicinesNameIsNotReadAsTheOneItLooksLike() {
        assertThat(names("hydralazin")).containsExactly("hydralazine");
        assertThat(names("hydrallazine")).containsExactly("hydralazine");
        assertThat(names("penicilin")).containsExactly("penicillin");
        assertThat(names("cycloserin")).containsExactly("cycloserine");
        assertThat(names("metaxalon")).containsExactly("metaxalone");
        assertThat(names("valgancyclovir")).containsExactly("valganciclovir");
    }

    private static List<String> names(String typed) {
        return read(typed).names().stream().flatMap(n -> n.rows().stream()).map(MedicineRow::name).distinct().toList();
    }

    @Test
    void severalOnOneLine() {
        MedicineReading reading = read("prednisolone 5 mg, cetirizine and zzyzxol 10mg / aspirin 75mg daily");
        assertThat(reading.names()).extracting(Name::typed).containsExactly("prednisolone", "cetirizine", "zzyzxol",
            "aspirin");
        assertThat(reading.names()).extracting(Name::sureness)
            .containsExactly(Sureness.NAME, Sureness.NAME, Sureness.NOT_RECOGNISED, Sureness.NAME);
        assertThat(reading.allSure()).isFalse();
    }

    @Test
    void aSentenceIsReadToo() {
        assertThat(read("I have been taking methotrexate once a week for my arthritis since 2020").names())
            .extracting(Name::typed).containsExactly("methotrexate");
        assertThat(read("tomo metotrexato una vez por semana y ácido fólico").names()).extracting(Name::typed)
            .containsExactly("metotrexato", "ácido fólico");
    }

    @Test
    void aNameInSeveralClassesHasThemAll() {
        assertThat(one("methotrexate").kinds()).contains("immunosuppressant", "cytotoxic-chemotherapy");
        assertThat(one("hydroxychloroquine").kinds()).contains("immunosuppressant", "photosensitiser");
    }

    @ParameterizedTest
    @ValueSource(strings = { "zzyzxol", "tablets", "the little white ones", "5 mg", "?", "🙂", "my heart pills", "xx" })
    void whatIsNotRecognisedSaysSo(String typed) {
        assertThat(read(typed).allSure()).as(typed).isFalse();
    }

    /** What is stopped or denied stays in view, as said, and still counts; no word of it vanishes. */
    @ParameterizedTest
    @CsvSource(delimiter = '|',
        value = { "I stopped taking methotrexate in May | immunosuppressant | STOPPED",
            "not on steroids | systemic-corticosteroid | DENIED",
            "no longer on prednisolone | systemic-corticosteroid | STOPPED",
            "dejé la prednisona en marzo | systemic-corticosteroid | STOPPED",
            "j'ai arrêté le méthotrexate | immunosuppressant | STOPPED",
            "odstawiłam metotreksat | immunosuppressant | STOPPED",
            "Methotrexat im Mai abgesetzt | immunosuppressant | STOPPED",
            "ich nehme kein Cetirizin | antihistamine | DENIED", "nie biorę cetyryzyny | antihistamine | DENIED",
            "sin corticoides | systemic-corticosteroid | DENIED", "warfarin 3mg | anticoagulant | TAKEN" })
    void whatIsSaidOfAMedicineIsKept(String typed, String kind, MedicineReading.Said said) {
        assertThat(one(typed).kinds()).as(typed).contains(kind);
        assertThat(one(typed).said()).as(typed).isEqualTo(said);
        assertThat(read(typed).allSure()).as(typed).isEqualTo(said == MedicineReading.Said.TAKEN);
    }

    @ParameterizedTest
    @ValueSource(strings = { "no medicines", "none", "nothing", "ninguno", "aucun", "żadnych", "keine", "n/a" })
    void sayingNoneInTheFieldForANameIsPutBeforeTheStylist(String typed) {
        assertThat(read(typed).names()).as(typed).isNotEmpty();
        assertThat(read(typed).allSure()).as(typed).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = { "プレドニゾロン", "泼尼松", "פרדניזולון" })
    void aScriptWithoutItsSoundsIsNotRecognisedAndNotLost(String typed) {
        assertThat(read(typed).names()).as(typed).isNotEmpty()
            .allSatisfy(name -> assertThat(name.sureness()).isEqualTo(Sureness.NOT_RECOGNISED));
        assertThat(typed).startsWith(read(typed).names().get(0).typed().split(" ")[0]);
    }

    /** Every listed pair, and every spelling one slip from the listed name, whichever letter it is. */
    @Test
    void noLookAlikeIsReadAsTheMedicineItLooksLike() throws IOException {
        int pairs = 0;
        for (String line : Files.readAllLines(Path.of("src/main/knowledge/lexicon/look-alikes.csv")).stream().skip(1)
            .toList()) {
            String name = line.split(",")[0];
            String like = line.split(",")[1];
            pairs += like.isEmpty() ? 0 : 1;
            for (int i = 1; i < name.length(); i++) {
                String lost = name.substring(0, i) + name.substring(i + 1);
                assertThat(read(lost).names().stream().flatMap(n -> n.rows().stream()).map(MedicineRow::name)).as(lost)
                    .doesNotContain(like.isEmpty() ? "-" : like);
            }
        }
        assertThat(pairs).isGreaterThan(150);
    }

    @Test
    void nothingTypedIsNoMedicine() {
        assertThat(read("").names()).isEmpty();
        assertThat(read("  \n").names()).isEmpty();
    }

    @Test
    void everyShippedNameIsReadAsItselfInAnyCase() throws IOException {
        for (String line : Files.readAllLines(Path.of("src/main/knowledge/lexicon/medicines.csv")).stream().skip(1)
            .toList()) {
            String name = line.split(",")[0].replace("\"", "");
            String kind = line.split(",")[1];
            assertThat(read(name).names()).as(name).hasSize(1).allSatisfy(n -> assertThat(n.kinds()).contains(kind));
            assertThat(read(name.toUpperCase(Locale.ROOT)).names()).as(name).hasSize(1)
                .allSatisfy(n -> assertThat(n.kinds()).contains(kind));
            assertThat(one(name).sureness()).as(name).isEqualTo(Sureness.NAME);
        }
    }

    /** Spellings that sound alike must not be two medicines that mean different things. */
    @Test
    void noTwoMedicinesOfDifferentClassesSoundAlike() throws IOException {
        for (String line : Files.readAllLines(Path.of("src/main/knowledge/lexicon/medicines.csv")).stream().skip(1)
            .toList()) {
            String name = line.split(",")[0];
            assertThat(one(name).rows()).as(name).extracting(MedicineRow::name).containsOnly(name);
        }
    }

    @Test
    void anAbbreviationIsSpeltAndNotHeard() {
        assertThat(one("AZA 100 mg").kinds()).as("azathioprine is not read as acetylsalicylic acid").isEmpty();
        assertThat(one("ASA 100 mg").kinds()).containsExactly("antiplatelet");
    }

    @Test
    void readsTheSameUnderTurkishLetters() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(one("CETIRIZINE").kinds()).contains("antihistamine");
            assertThat(one("ISOTRETINOIN").kinds()).contains("retinoid");
        } finally {
            Locale.setDefault(before);
        }
    }
}
