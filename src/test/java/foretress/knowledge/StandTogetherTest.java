package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Finding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * What is read together must not contradict itself. The list of all findings that can stand beside each other on a common fact was
 * read by a person, both sentences for stylist and client, in every language; whoever adds a line has read them too.
 * {@code target/stand-together.md} holds the sentences.
 */
@Execution(ExecutionMode.CONCURRENT)
class StandTogetherTest {
    private static final Path REVIEWED = Path.of("src/test/cases-read/stand-together.txt");
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final StandTogether TOGETHER = new StandTogether(KNOWLEDGE.ruleSet());

    @Test
    @DisplayName("R12: findings that stand together on one fact were read together by a person")
    void nothingStandsTogetherThatNobodyHasReadTogether() throws IOException {
        Files.writeString(Path.of("target/stand-together.md"), sentences(TOGETHER.pairs()));
        assertThat(new TreeSet<>(TOGETHER.pairs().keySet()))
            .as("read the new pairs in target/stand-together.md, mend them where they contradict "
                + "each other, then add or take out their lines in " + REVIEWED)
            .isEqualTo(reviewed());
    }

    @Test
    @DisplayName("R12: every finding is heard somewhere")
    void noRuleIsSilentForEver() {
        assertThat(TOGETHER.neverHeard()).isEmpty();
    }

    private static TreeSet<String> reviewed() throws IOException {
        return Files.readAllLines(REVIEWED).stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
            .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String sentences(TreeMap<String, StandTogether.Pair> pairs) {
        return pairs.values().stream().map(
            pair -> "## " + pair.key() + "\n" + Stream.of(pair.one(), pair.other()).map(StandTogetherTest::sentences)
                .collect(Collectors.joining("\n")))
            .collect(Collectors.joining("\n\n"));
    }

    private static String sentences(Finding finding) {
        return List.of("en", "es").stream()
            .map(language -> KNOWLEDGE.words(language).finding(finding.ruleId(), finding.onlyIfUnknown()))
            .map(words -> "- %s | %s | %s".formatted(words.title(), words.do_(), words.client()))
            .collect(Collectors.joining("\n"));
    }
}
