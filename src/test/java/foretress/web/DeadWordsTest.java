package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A message that no page and no Java says any more is a sentence somebody still translates. */
class DeadWordsTest {
    private static final Pattern KEY = Pattern.compile("@Message(?:\\([^)]*\\))?\\s+String (\\w+)\\(");
    private static final Pattern SAID = Pattern.compile("[.:](\\w+)\\b");

    private final List<String> java = texts(Path.of("src/main/java"));
    private final Set<String> said = Stream.concat(java.stream(), texts(Path.of("templates")).stream())
        .flatMap(text -> words(SAID, text)).collect(Collectors.toSet());

    private static Stream<String> words(Pattern pattern, String text) {
        return pattern.matcher(text).results().map((MatchResult found) -> found.group(1));
    }

    private static List<String> texts(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).map(DeadWordsTest::text).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<String> keys() {
        return java.stream().filter(text -> text.contains("@MessageBundle")).flatMap(text -> words(KEY, text)).toList();
    }

    @Test
    void everyMessageIsSaidSomewhere() {
        assertThat(keys()).isSubsetOf(said);
    }

    @Test
    void theBundlesAreReallyRead() {
        assertThat(keys()).hasSizeGreaterThan(1500);
    }
}
