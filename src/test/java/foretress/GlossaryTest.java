package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The classes that the contributors' guide names are there, each in its room. */
class GlossaryTest {
    private static final Path MAIN = Path.of("src/main/java/foretress");
    private static final Pattern NAMED = Pattern.compile("`([a-z]+)\\.([A-Z]\\w*)`");

    private final List<MatchResult> named = named();

    private static List<MatchResult> named() {
        try {
            return NAMED.matcher(Files.readString(Path.of("DEVELOPERS.md"))).results().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyClassNamedIsThere() {
        assertThat(named).hasSizeGreaterThan(40)
            .allSatisfy(name -> assertThat(MAIN.resolve(name.group(1)).resolve(name.group(2) + ".java")).exists());
    }

    @Test
    void noTwoClassesOfTheProgramShareAName() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".java")))
                .doesNotHaveDuplicates();
        }
    }

    @Test
    void noClassOfTheProgramIsTakenForATest() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                .noneMatch(name -> name.matches(".*Tests?\\.java"));
        }
    }

    @Test
    void noTestIsLeftOutByItsName() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
            assertThat(files.filter(file -> file.toString().endsWith(".java")).filter(GlossaryTest::tests)
                .map(file -> file.getFileName().toString())).allMatch(name -> name.matches(".*(Test|IT)\\.java"));
        }
    }

    private static boolean tests(Path file) {
        try {
            return Pattern.compile("(?m)^\\s*@(Test|ParameterizedTest|Property|TestFactory)\\b")
                .matcher(Files.readString(file)).find();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
