package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Reads the real knowledge: anything wrong in it fails the build, with its place. */
class KnowledgeTest {

    @Test
    void theKnowledgeHasNoFault() {
        KnowledgeReader reader = new KnowledgeReader(KnowledgeFiles.ofClassPath());
        reader.read();
        assertThat(reader.complaints().all()).as("faults in src/main/knowledge").isEmpty();
    }

    @Test
    void everyIdHasWordsInEveryLanguage() {
        Knowledge knowledge = new KnowledgeReader(KnowledgeFiles.ofClassPath()).read();
        assertThat(WordsCheck.missing(knowledge)).as("words to write").isEmpty();
    }

    @Test
    void theHashIsTheSameForTheSameFilesAndOtherForAnyChange() {
        KnowledgeFiles files = KnowledgeFiles.ofClassPath();
        assertThat(KnowledgeFiles.ofClassPath().hash()).isEqualTo(files.hash()).matches("[0-9a-f]{64}");
        List<String> hashes = new ArrayList<>();
        files.byPath().forEach((path, text) -> hashes.add(files.with(path, text + " ").hash()));
        assertThat(new TreeSet<>(hashes)).hasSameSizeAs(hashes).doesNotContain(files.hash());
    }
}
