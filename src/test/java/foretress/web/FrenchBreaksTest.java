package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where a French line must not break; a browser breaks at every plain hyphen and space, in the middle of a heading too. */
class FrenchBreaksTest {
    /** U+2011 and U+00A0 are hyphen and space that hold their line together. */
    private static final Pattern BREAKS = Pattern.compile("\\w-t-(?:elle|il|on)|\\S [?!:;»](?=[\\s'\".”]|$)");

    static Stream<Path> french() throws IOException {
        try (Stream<Path> words = Files.list(Path.of("src/main/knowledge/words/fr"));
            Stream<Path> bundles = Files.list(Path.of("src/main/resources/messages"))) {
            return Stream.concat(words, bundles.filter(file -> file.toString().endsWith("_fr.properties"))).toList()
                .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("french")
    @DisplayName("no French line breaks around the t of “a-t-elle”, nor before the marks that stand after a space")
    void nothingBreaksThere(Path file) throws IOException {
        List<String> broken = Files.readAllLines(file).stream().filter(line -> !line.strip().startsWith("#"))
            .filter(line -> BREAKS.matcher(line).find()).toList();
        assertThat(broken).as("%s", file).isEmpty();
    }
}
