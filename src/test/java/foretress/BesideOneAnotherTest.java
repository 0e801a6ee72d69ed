package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Two classes on one application would see each other's clients; two whose browser is the same would speak to it at once. */
class BesideOneAnotherTest {
    private static final Path TESTS = Path.of("src/test/java/foretress");

    private static List<Path> marked() throws IOException {
        try (Stream<Path> files = Files.walk(TESTS)) {
            return files
                .filter(file -> file.toString().endsWith(".java") && !file.endsWith("BesideOneAnotherTest.java"))
                .filter(file -> text(file).contains("@Execution(ExecutionMode.CONCURRENT)")).toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    @DisplayName("Only what needs neither the application nor the browser runs beside other tests")
    void nothingOfTheApplicationRunsBesideOtherTests() throws IOException {
        assertThat(marked()).hasSizeGreaterThan(10).allSatisfy(file -> assertThat(text(file)).as("%s", file)
            .doesNotContain("@QuarkusTest", "Browser.open()", "Locale.setDefault", "System.setProperty"));
    }
}
