package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Lexicon;
import foretress.lexicon.Substance;
import java.nio.file.Path;
import java.util.TreeMap;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LexiconReaderTest {
    private static final String SUBSTANCES = "lexicon/substances.csv";
    private static final String HEAD = "name,cas,other_names,class,risk,entry,limit,source,confidence\n";

    private static java.util.List<String> complaints(String path, String text) {
        var complaints = new Complaints();
        new LexiconReader(new KnowledgeFiles(new TreeMap<>()).with(path, text), complaints).read();
        return complaints.all().stream().map(Complaint::headline).toList();
    }

    @Test
    void theShippedListsAreClean() {
        var complaints = new Complaints();
        new LexiconReader(KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")), complaints).read();
        assertThat(complaints.all()).isEmpty();
    }

    @Test
    void aMisprintedNumberIsPointedAt() {
        assertThat(complaints(SUBSTANCES, HEAD + "BASIC VIOLET 2,3245-91-7,,direct-dye,none,,,somewhere,verified\n"))
            .containsExactly("lexicon/substances.csv:2:16  '3245-91-7' is no CAS number: its check digit is wrong");
    }

    @Test
    void aRiskNobodyKnowsIsPointedAtWithTheOneMeant() {
        assertThat(complaints(SUBSTANCES, HEAD + "X,,,metal-salt,metal-residu,,,somewhere,verified\n"))
            .containsExactly(
                "lexicon/substances.csv:2:16  no such risk as 'metal-residu'; did you mean 'metal-residue'?");
    }

    @Test
    void aCommaWithoutQuotesATwinAndAnEmptySourceAreRefused() {
        assertThat(complaints(SUBSTANCES, HEAD
            + "A,,,k,none,,,s,verified\nA,,,k,none,,,s,verified\nB,,,k,none,,,,verified\nC,D,,,k,none,,,s,verified\nE,,,k,none,,,s,sure\n"))
            .containsExactly("lexicon/substances.csv:3:1  'A' stands here twice",
                "lexicon/substances.csv:4:14  this field is empty",
                "lexicon/substances.csv:5:1  10 fields, but there are 9 columns; a comma within a field needs quotes around it",
                "lexicon/substances.csv:6:16  not a confidence: 'sure'; it is verified or memory");
    }

    @Test
    void otherColumnsAreRefused() {
        assertThat(complaints("lexicon/medicines.csv", "inn,class\n")).singleElement().asString()
            .contains("the columns are to be name,class,why");
    }

    @Test
    void theAssessmentAsksNameByName() {
        Lexicon lexicon =
            new LexiconReader(KnowledgeFiles.ofFolder(Path.of("src/main/knowledge")), new Complaints()).read();
        assertThat(lexicon.names("Prednisolone 5mg tabs, zzyzxol")).containsExactly("Prednisolone", "zzyzxol");
        assertThat(lexicon.medicine("zzyzxol")).isEmpty();
        assertThat(lexicon.isSure("zzyzxol")).isFalse();
        assertThat(lexicon.isSure("prednisolone")).isTrue();
        assertThat(lexicon.medicine("predinsolone")).containsExactly("systemic-corticosteroid");
        assertThat(lexicon.isSure("predinsolone")).isFalse();
        assertThat(lexicon.label("aqua, bismuth citrate").risks()).contains("metal-residue");
        assertThat(lexicon.label("aqua, glycerin").unknownWords()).isFalse();
        assertThat(lexicon.label("aqua, zzyzxol").unknownWords()).isTrue();
    }

    @Test
    @DisplayName("R51: each row says what verified it, and a number from memory that its check digit holds")
    void eachRowSaysWhatVerifiedIt() {
        for (Substance substance : ShippedLexicon.SUBSTANCES) {
            boolean memory = substance.confidence().equals("memory");
            assertThat(substance.source()).as(substance.name()).isNotBlank();
            assertThat(!memory || substance.cas().isEmpty() || substance.source().contains("check digit holds"))
                .as("%s: %s", substance.name(), substance.source()).isTrue();
            assertThat(memory || !substance.source().equals("from memory")).as(substance.name()).isTrue();
        }
    }
}
