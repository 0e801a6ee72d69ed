package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Knowledge that must be refused. Every file of the folder stands in for one file of a small sound base, and says at its end
 * exactly what must be complained of: each complaint as it is printed, between lines of {@code #}.
 */
class BrokenKnowledgeTest {
    private static final java.nio.file.Path FOLDER = java.nio.file.Path.of("src/test/broken");
    private static final String STANDS_IN = "# stands in for: ";

    private static final KnowledgeFiles BASE = KnowledgeFiles.ofFolder(FOLDER.resolve("base"));

    @Test
    void theBaseItselfIsSound() {
        var reader = new KnowledgeReader(BASE);
        assertThat(WordsCheck.missing(reader.read())).isEmpty();
        assertThat(reader.complaints().all()).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> eachIsRefusedWithExactlyItsComplaints() {
        return KnowledgeFiles.ofFolder(FOLDER).byPath().entrySet().stream().filter(file -> !file.getKey().contains("/"))
            .map(file -> dynamicTest(file.getKey().replace(".yaml", "").replace('-', ' '),
                () -> assertThat(complaints(file.getValue())).isEqualTo(expected(file.getValue()))));
    }

    @Test
    void theApplicationDoesNotStartOnIt() {
        KnowledgeFiles broken = BASE.with("sources.yaml", "own: { status: own decision }\n");
        assertThatThrownBy(() -> Knowledge.of(broken)).isInstanceOf(KnowledgeException.class)
            .hasMessageContaining(
                "sources.yaml:1:6  'title' is missing\n    own: { status: own decision }\n         ^");
    }

    static String complaints(String text) {
        var reader =
            new KnowledgeReader(BASE.with(text.lines().findFirst().orElseThrow().substring(STANDS_IN.length()), text));
        Knowledge knowledge = reader.read();
        List<String> said = reader.complaints().all().stream().map(Complaint::toString).toList();
        return String.join("\n", said.isEmpty() ? WordsCheck.missing(knowledge) : said);
    }

    private static String expected(String text) {
        return String.join("\n",
            text.lines().filter(line -> line.startsWith("#| ")).map(line -> line.substring(3)).toList());
    }
}
