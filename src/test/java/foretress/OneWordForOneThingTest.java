package foretress;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A glossary a language says which word stands for a thing; no file of the language uses another. */
@DisplayName("R59: one word for one thing, in every file of a language")
class OneWordForOneThingTest {
    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    private static final Path WORDS = Path.of("src/main/knowledge/words");

    private record Entry(String thing, String word, String never, String except) {
        static Entry of(String line) {
            String[] fields = line.split(" \\| ?", -1);
            return new Entry(fields[0].strip(), fields[1].strip(),
                String.join("|", List.of(fields).subList(2, fields.length - 1)).strip(),
                fields[fields.length - 1].strip());
        }

        boolean exempts(Path file) {
            return !except.isEmpty() && except.startsWith(file.getFileName() + ":");
        }
    }

    private static List<Entry> glossary(String language) throws IOException {
        return Files.readAllLines(Path.of("src/test/reviewed/glossary-" + language + ".txt")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank()).map(Entry::of).toList();
    }

    private static List<Path> files(String language) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> words = Files.list(WORDS.resolve(language)); Stream<Path> messages = Files.list(MESSAGES)) {
            words.forEach(files::add);
            messages.filter(file -> file.toString().endsWith("_" + language + ".properties")).forEach(files::add);
        }
        return files;
    }

    @Test
    @DisplayName("the Spanish files say each thing with its one word")
    void spanishSaysEachThingWithItsOneWord() throws IOException {
        List<String> others = new ArrayList<>();
        for (Entry entry : glossary("es")) {
            for (Path file : entry.never.isEmpty() ? List.<Path>of() : files("es")) {
                Pattern never = Pattern.compile(entry.never, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
                Files.readAllLines(file).stream()
                    .filter(line -> !entry.exempts(file) && never.matcher(line).find())
                    .map(line -> "%s: %s is '%s': %s".formatted(file.getFileName(), entry.thing, entry.word,
                        line.strip()))
                    .forEach(others::add);
            }
        }
        assertThat(others).isEmpty();
    }
}
