package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class LexiconReferenceTest {
    private static final Path FOLDER = Path.of("docs/reference");

    @Test
    void theReferenceOfSubstancesSaysWhatTheListSays() throws IOException {
        holds("substances.md", LexiconReference.substances());
    }

    @Test
    void theReferenceOfMedicinesSaysWhatTheListSays() throws IOException {
        holds("medicines.md", LexiconReference.medicines());
    }

    private static void holds(String file, String made) throws IOException {
        Path page = FOLDER.resolve(file);
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.createDirectories(FOLDER);
            Files.writeString(page, made);
        }
        assertThat(page).as("make it anew: mvn test -Dtest=LexiconReferenceTest -Dreference.rewrite=true")
            .hasContent(made);
    }
}
