package foretress.lexicon;

import static foretress.knowledge.ShippedLexicon.kinds;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.ShippedLexicon;
import foretress.lexicon.MedicineReading.Name;
import foretress.lexicon.MedicineReading.Said;
import foretress.lexicon.MedicineReading.Sureness;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names as fingers, ears and other countries write them. */
class TypedMedicinesTest {

    private static List<Name> read(String typed) {
        return ShippedLexicon.MEDICINES.read(typed).names();
    }

    private static Set<String> names(String typed) {
        return read(typed).stream().flatMap(n -> n.rows().stream()).map(MedicineRow::name)
            .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> shippedNames() throws IOException {
        return Files.readAllLines(Path.of("src/main/knowledge/lexicon/medicines.csv")).stream().skip(1)
            .map(line -> line.split(",")[0]).filter(name -> name.matches("[a-z]{7,}")).distinct().toList();
    }

    @ParameterizedTest
    @DisplayName("R49: a name split in two is the whole name, never the shorter one in it")
    @CsvSource({ "hydroxy chloroquine, hydroxychloroquine", "hydroxi chlorokwine, hydroxychloroquine",
        "ethinyl estradiol, ethinylestradiol", "hydro cortisone, hydrocortisone",
        "methyl prednisolone 4mg, methylprednisolone", "metho trexate, methotrexate", "doxi cycling, doxycycline",
        "met forming, metformin", "war far in, warfarin", "i be profen, ibuprofen",
        "lever thyroxine, levothyroxine sodium",
        "nor ethisterone, norethisterone", "oxy tetracycline, oxytetracycline", "es omeprazole, esomeprazole" })
    void aNameSplitInTwoIsTheWholeName(String typed, String meant) {
        assertThat(names(typed)).as(typed).containsExactly(meant);
    }

    @Test
    @DisplayName("R49: a hyphen at the end of a line parts nothing")
    void aHyphenAtTheEndOfALinePartsNothing() {
        assertThat(names("hydroxy-\nchloroquine")).containsExactly("hydroxychloroquine");
    }

    @ParameterizedTest
    @DisplayName("R49: with a word of chemistry before it, a name is another medicine, and nobody knows which")
    @ValueSource(strings = { "dihydro progesterone", "fluoro testosterone", "acetyl metformin" })
    void withAPrefixItIsAnotherMedicine(String typed) {
        assertThat(read(typed)).singleElement().satisfies(name -> {
            assertThat(name.sureness()).isEqualTo(Sureness.NOT_RECOGNISED);
            assertThat(name.typed()).isEqualTo(typed);
        });
    }

    @ParameterizedTest
    @DisplayName("R49: two vowels may slip in a long name")
    @CsvSource({ "spirinolactane, spironolactone", "methatrexite, methotrexate", "carbamezapene, carbamazepine",
        "prednasilone, prednisolone", "citrizine, cetirizine", "ciclosprin, ciclosporin", "amoxacillan, amoxicillin",
        "levotheroxene, levothyroxine sodium" })
    void twoVowelsMaySlip(String typed, String meant) {
        assertThat(names(typed)).as(typed).containsExactly(meant);
    }

    @ParameterizedTest
    @DisplayName("R49: a letter lost between two that are alike, or at the end, and one slip more where no other medicine is near")
    @CsvSource({ "traadol, tramadol", "atenooll, atenolol", "nebivolo, nebivolol", "Azthiorpin, azathioprine",
        "lymrcyvline, lymecycline" })
    void oneSlipMoreWhereItCanBeNoOther(String typed, String meant) {
        assertThat(names(typed)).as(typed).containsExactly(meant);
    }

    @ParameterizedTest
    @DisplayName("R49: a short form is its own medicine")
    @CsvSource({ "5-ASA, mesalazine", "UDCA, ursodeoxycholic acid", "L-Dopa, levodopa", "BPO, benzoyl peroxide" })
    void aShortFormIsItsOwnMedicine(String typed, String meant) {
        assertThat(names(typed)).as(typed).containsExactly(meant);
    }

    @ParameterizedTest
    @DisplayName("R49: what sounds alike at the start is alike")
    @CsvSource({ "certraline, sertraline", "setirizina, cetirizine", "zetirizine, cetirizine",
        "zyklosporin, ciclosporin",
        "siclosporina, ciclosporin", "espironolactona, spironolactone", "idrossiclorochina, hydroxychloroquine",
        "kortison, cortisone", "fenitoina, phenytoin" })
    void whatSoundsAlikeIsAlike(String typed, String meant) {
        assertThat(names(typed)).as(typed).contains(meant);
    }

    @ParameterizedTest
    @DisplayName("R49: salts joined to a name, before it or behind it, leave the name")
    @CsvSource(delimiter = '|',
        value = { "Metoprololsuccinat 47,5 mg 1-0-1 | metoprolol", "Lithiumcarbonat 450 ret | lithium",
            "Metforminhydrochlorid 1000 | metformin", "Bisoprololfumarat 5 | bisoprolol",
            "clorhidrato de metformina 850 | metformin", "carbonato de litio | lithium", "węglan litu 250 | lithium",
            "chlorowodorek metforminy 500 mg | metformin", "acétate de cyprotérone 50 | cyproterone",
            "metformina cloridrato 500 | metformin", "maść z klobetazolem | clobetasol",
            "j'ai l'isotrétinoïne | isotretinoin" })
    void saltsLeaveTheName(String typed, String meant) {
        assertThat(names(typed)).as(typed).containsExactly(meant);
        assertThat(read(typed)).as(typed).noneMatch(name -> name.sureness() == Sureness.NOT_RECOGNISED);
    }

    @ParameterizedTest
    @DisplayName("R49: a word for a class comes back as the class, never as one medicine of it")
    @CsvSource(delimiter = '|', value = { "steroids | corticosteroid | systemic-corticosteroid",
        "blood thinner | anticoagulant | anticoagulant", "chemo | chemotherapy | cytotoxic-chemotherapy",
        "beta blockers | beta blocker | beta-blocker", "antihistamines | antihistamine | antihistamine",
        "biologic | biologic medicine | biologic", "anti-rejection tablets | immunosuppressant | immunosuppressant",
        "the pill | contraceptive pill | hormonal",
        "Antidepressiva | antidepressant | anticonvulsant-or-mood-stabiliser",
        "sulfa antibiotics | sulfonamide | sulfonamide-antimicrobial",
        "Schilddrüsentabletten | thyroid hormone | thyroid-drug",
        "leki przeciwzakrzepowe | anticoagulant | anticoagulant", "insulina | insulin | diabetes-drug",
        "Eisentabletten | iron | iron-supplement" })
    void aClassWordIsItsClass(String typed, String name, String kind) {
        assertThat(names(typed)).as(typed).containsExactly(name);
        assertThat(kinds(typed)).as(typed).contains(kind);
    }

    @ParameterizedTest
    @DisplayName("R49: words that hold a medicine's name and mean none")
    @ValueSource(
        strings = { "insulin resistance", "resistencia a la insulina", "Insulinresistenz", "flat iron every day",
            "lithium battery in my hearing aid", "fer à lisser tous les jours", "ferro arricciacapelli",
            "iron deficiency" })
    void someWordsMeanNoMedicine(String typed) {
        assertThat(kinds(typed)).as(typed).isEmpty();
        assertThat(ShippedLexicon.MEDICINES.read(typed).allSure()).as(typed).isFalse();
    }

    @ParameterizedTest
    @DisplayName("R49: refused or offered is not taken; after 'but' and 'except' another thing is said")
    @CsvSource(delimiter = '|', value = { "was offered methotrexate but refused | methotrexate | DENIED",
        "declined isotretinoin | isotretinoin | DENIED", "allergic to amoxicillin | amoxicillin | DENIED",
        "my husband takes warfarin | warfarin | DENIED", "nothing except levothyroxine | levothyroxine sodium | TAKEN",
        "no tomo nada excepto metformina | metformin | TAKEN" })
    void refusedIsNotTaken(String typed, String name, Said said) {
        assertThat(read(typed)).as(typed).filteredOn(n -> !n.rows().isEmpty()).singleElement().satisfies(n -> {
            assertThat(n.rows()).extracting(MedicineRow::name).contains(name);
            assertThat(n.said()).isEqualTo(said);
        });
    }

    @ParameterizedTest
    @DisplayName("R49: the ordinary words of a phrase are no medicines to look up")
    @ValueSource(strings = { "Paracetamol when I need it", "hydroxychloroquine for lupus", "letrozole (breast cancer)",
        "warfarin 3mg but it changes with my blood test", "beclometasone, 2 puffs",
        "cetirizine for my hay fever and itchy eyes",
        "Minoxidil Lösung für die Kopfhaut", "minoxidil lozione", "metotrexato una vez por semana para la artritis",
        "nothing except levothyroxine", "tomo omeprazol para el estómago", "Ramipril wegen Blutdruck",
        "cetyryzyna na alergię codziennie rano" })
    void ordinaryWordsAreNoMedicines(String typed) {
        assertThat(read(typed)).as(typed).isNotEmpty()
            .noneMatch(name -> name.sureness() == Sureness.NOT_RECOGNISED);
    }

    @ParameterizedTest
    @DisplayName("R49: a medicine nobody named is asked about, beside others too")
    @ValueSource(strings = { "ramipril, blood pressure tablets", "metformin and then zzyzxol",
        "cetirizine, something for the heart",
        "warfarin; small white pills for the stomach", "heart tablets" })
    void aMedicineNobodyNamedIsAskedAbout(String typed) {
        assertThat(read(typed)).as(typed).anyMatch(name -> name.sureness() == Sureness.NOT_RECOGNISED);
    }

    @ParameterizedTest
    @DisplayName("R49: an abbreviation is spelt exactly, in capitals where it could be a word")
    @CsvSource({ "HCTZ 25, hydrochlorothiazide", "mtx inj, methotrexate", "ASS 100, acetylsalicylic acid",
        "6MP, mercaptopurine", "6-MP, mercaptopurine", "PTU, propylthiouracil", "MMF 1g, mycophenolic acid" })
    void anAbbreviationIsSpelt(String typed, String meant) {
        assertThat(names(typed)).as(typed).contains(meant);
    }

    @Test
    @DisplayName("R49: an abbreviation in small letters that could be a word is none, and none is heard in a longer word")
    void aWordIsNoAbbreviation() {
        assertThat(names("pop music")).isEmpty();
        assertThat(names("ass")).isEmpty();
        assertThat(names("MTXX")).isEmpty();
    }

    @ParameterizedTest
    @DisplayName("R49: Cyrillic, Greek and Arabic letters are read by their sound")
    @CsvSource(delimiter = '|', value = { "преднизолон 5 мг | prednisolone", "метотрексат | methotrexate",
        "πρεδνιζολόνη | prednisolone", "ميثوتريكسات | methotrexate", "ليفوثيروكسين ٥٠ | levothyroxine sodium",
        "هيدروكسي كلوروكين | hydroxychloroquine", "ميتفورمين | metformin", "سيتريزين | cetirizine",
        "بريدنيزولون | prednisolone" })
    void otherLettersAreReadByTheirSound(String typed, String meant) {
        assertThat(names(typed)).as(typed).containsExactly(meant);
    }

    @Test
    @DisplayName("R49: any name of seven letters, split anywhere, is read as itself")
    void anySplitNameIsReadAsItself() throws IOException {
        var lot = new Random(49);
        for (String name : shippedNames()) {
            String split = new StringBuilder(name).insert(3 + lot.nextInt(name.length() - 5), ' ').toString();
            assertThat(names(split)).as(split).contains(name);
        }
    }

    @Test
    @DisplayName("R49: with one vowel changed a name is read as itself or asked about, never as a medicine of another class")
    void aChangedVowelNeverMakesAnotherMedicine() throws IOException {
        var lot = new Random(49);
        int read = 0;
        List<String> all = shippedNames();
        for (String name : all) {
            String changed = withAnotherVowel(name, lot);
            assertThat(kinds(name)).as("%s for %s", changed, name).containsAll(kinds(changed));
            read += names(changed).contains(name) ? 1 : 0;
        }
        assertThat((double) read / all.size()).isGreaterThan(0.97);
    }

    private static String withAnotherVowel(String name, Random lot) {
        int at;
        do {
            at = 1 + lot.nextInt(name.length() - 1);
        } while ("aeiou".indexOf(name.charAt(at)) < 0);
        char vowel = "aeiou".charAt(("aeiou".indexOf(name.charAt(at)) + 1 + lot.nextInt(4)) % 5);
        return name.substring(0, at) + vowel + name.substring(at + 1);
    }

    @ParameterizedTest
    @DisplayName("R51: what primary care gives most is known by name")
    @ValueSource(strings = { "atorvastatin", "simvastatin", "amlodipine", "losartan", "citalopram", "venlafaxine",
        "mirtazapine",
        "ibuprofen", "tramadol", "quetiapine", "diazepam", "zopiclone", "tamsulosin", "alendronic acid", "aciclovir",
        "fluconazole", "metronidazole", "azithromycin", "flucloxacillin", "nitrofurantoin", "bimatoprost",
        "latanoprost",
        "pembrolizumab", "trastuzumab", "olaparib", "lenalidomide", "umeclidinium", "dienogest", "biotin", "zinc",
        "saw palmetto", "omega-3", "denosumab", "tirzepatide", "linagliptin", "hormone coil", "birth control", "POP" })
    void commonMedicinesAreKnown(String name) {
        assertThat(read(name)).as(name).singleElement()
            .satisfies(n -> assertThat(n.sureness()).isEqualTo(Sureness.NAME));
    }
}
