package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Found in the files, not listed: who adds a setting that only tests or only a real start has must say here why. */
@DisplayName("R1: what is shipped is what is tested, but for a list that a person has read")
class SettingsThatDifferTest {
    private static final Path REVIEWED = Path.of("src/test/reviewed/settings-that-differ.txt");
    private static final Path MAIN = Path.of("src/main/java/foretress");
    private static final Path TESTS = Path.of("src/test/java/foretress");
    private static final Pattern SET = Pattern.compile("properties\\.set\\((?:\"([^\"]+)\"|([A-Z]+))");
    private static final Pattern CONSTANT = Pattern.compile("String ([A-Z]+) = \"(foretress\\.[a-z-]+)\"");
    private static final Pattern NAMED = Pattern.compile("\"((?:%[a-z]+\\.)?(?:quarkus|foretress)\\.[a-z.-]+)\"\\s*,");
    private static final Pattern BY_MODE =
        Pattern.compile("@(?:Unless|If)Build(?:Profile|Property)|LaunchMode|ProfileManager|isProfileActive");

    private static Set<String> differing() throws IOException {
        var found = new TreeSet<String>();
        for (String key : keys(Path.of("src/main/resources/application.properties"))) {
            if (key.startsWith("%")) {
                found.add(key.substring(1, key.indexOf('.')) + " | " + key.substring(key.indexOf('.') + 1));
            }
        }
        try (Stream<Path> files = files(Path.of("src/test/resources"), ".properties")) {
            for (Path file : files.filter(f -> !f.endsWith("junit-platform.properties")).toList()) {
                keys(file).forEach(key -> found.add("test file | " + key));
            }
        }
        start().forEach(key -> found.add("start | " + key));
        profiles().forEach(key -> found.add("test profile | " + key));
        beans().forEach(name -> found.add("test bean | " + name));
        byMode().forEach(name -> found.add("dev | " + name));
        return found;
    }

    private static Set<String> keys(Path file) throws IOException {
        var properties = new Properties();
        properties.load(new StringReader(Files.readString(file)));
        return properties.stringPropertyNames();
    }

    /** Everything the code of the start tells the server. */
    private static List<String> start() throws IOException {
        try (Stream<Path> files = Files.list(MAIN.resolve("start"))) {
            String code = String.join("\n",
                files.filter(f -> f.toString().endsWith(".java")).map(SettingsThatDifferTest::text).toList());
            Map<String, String> constants = CONSTANT.matcher(code).results()
                .collect(java.util.stream.Collectors.toMap(m -> m.group(1), m -> m.group(2), (one, same) -> one));
            return SET.matcher(code).results().map(m -> m.group(1) != null ? m.group(1) : constants.get(m.group(2)))
                .toList();
        }
    }

    private static List<String> profiles() throws IOException {
        try (Stream<Path> files = files(TESTS, ".java")) {
            return files.map(SettingsThatDifferTest::text)
                .filter(code -> code.contains("QuarkusTestProfile") && code.contains("implements"))
                .flatMap(code -> NAMED.matcher(code).results().map(m -> m.group(1))).toList();
        }
    }

    private static List<String> beans() throws IOException {
        try (Stream<Path> files = files(TESTS, ".java")) {
            return files
                .filter(file -> text(file).lines().anyMatch(line -> line.matches("\\s*@(Mock|Alternative)\\b.*")))
                .map(file -> name(TESTS, file)).toList();
        }
    }

    private static List<String> byMode() throws IOException {
        try (Stream<Path> files = files(MAIN, ".java")) {
            return files.filter(file -> BY_MODE.matcher(text(file)).find()).map(file -> name(MAIN, file)).toList();
        }
    }

    private static String name(Path root, Path file) {
        return "foretress." + root.relativize(file).toString().replace('/', '.').replaceAll("\\.java$", "");
    }

    private static Stream<Path> files(Path root, String ending) throws IOException {
        return Files.walk(root).filter(file -> file.toString().endsWith(ending));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> reviewed() throws IOException {
        return Files.readAllLines(REVIEWED).stream().filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }

    @Test
    void everyDifferenceIsInTheListAndTheListHoldsNoOther() throws IOException {
        assertThat(reviewed().stream().map(line -> line.substring(0, line.lastIndexOf(" | "))))
            .containsExactlyInAnyOrderElementsOf(differing());
    }

    @Test
    void everyLineSaysWhy() throws IOException {
        assertThat(reviewed()).allSatisfy(line -> assertThat(line.split(" \\| ")).as(line).hasSize(3)
            .allSatisfy(part -> assertThat(part).isNotBlank()));
    }

    @Test
    void theOnesThatUsedToDifferSilentlyAreGone() throws IOException {
        assertThat(differing()).noneMatch(line -> line.contains("csrf"));
    }
}
