package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class KnowledgeReferenceTest {
    private static final Path FOLDER = Path.of("docs/reference");

    static Stream<Arguments> pages() {
        Knowledge knowledge = Loaded.KNOWLEDGE;
        return Stream.of(arguments("services.md", new ServicesReference(knowledge).write()),
            arguments("policies.md", new PoliciesReference(knowledge).write()),
            arguments("sources.md", new SourcesReference(knowledge).write()),
            arguments("how-a-finding-is-made.md", new FindingWalk(knowledge).write()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pages")
    void thePageSaysWhatTheKnowledgeSays(String name, String made) throws IOException {
        Path page = FOLDER.resolve(name);
        if (Boolean.getBoolean("reference.rewrite")) {
            Files.writeString(page, made);
        }
        assertThat(page).as("make it anew: mvn test -Dtest=KnowledgeReferenceTest -Dreference.rewrite=true")
            .hasContent(made);
    }
}
