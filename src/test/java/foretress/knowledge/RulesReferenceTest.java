package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class RulesReferenceTest {
    private static final Path PAGE = Path.of("docs/reference/rules.md");

    @Test
    void theReferenceSaysWhatTheKnowledgeSays() throws IOException {
        String made = new RulesReference(Loaded.KNOWLEDGE).write();
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, made);
        }
        assertThat(PAGE).as("make it anew: mvn test -Dtest=RulesReferenceTest -Dreference.rewrite=true")
            .hasContent(made);
    }
}
