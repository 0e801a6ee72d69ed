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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A glossary a language says which word stands for a thing; no file of the language uses another. */
@DisplayName("R59: one word for one thing, in every file of a language")
class OneWordForOneThingTest {
    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    private static final Path WORDS = Path.of("src/main/knowledge/words");
    private static final Path REVIEWED = Path.of("src/test/reviewed");
    /** The language whose bundles have no tag in their name. */
    private static final String FIRST = "en";
    private static final String KEY = "^\\s*[\\w. -]+[:=]\\s?";

    private record Entry(String thing, String word, String never, String except) {
        static Entry of(String line) {
            String[] fields = line.split(" \\| ?", -1);
            return new Entry(fields[0].strip(), fields[1].strip(),
                String.join("|", List.of(fields).subList(2, fields.length - 1)).strip(),
                fields[fields.length - 1].strip());
        }

        Pattern pattern() {
            return Pattern.compile(never, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        }

        boolean exempts(Path file) {
            return !except.isEmpty() && except.startsWith(file.getFileName() + ":");
        }

        boolean speaksIn(String line) {
            return !never.isEmpty() && pattern().matcher(line.replaceFirst(KEY, "")).find();
        }
    }

    static List<String> languages() throws IOException {
        try (Stream<Path> all = Files.list(WORDS)) {
            return all.map(folder -> folder.getFileName().toString()).sorted().toList();
        }
    }

    private static List<Entry> glossary(String language) throws IOException {
        return Files.readAllLines(REVIEWED.resolve("glossary-" + language + ".txt")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank()).map(Entry::of).toList();
    }

    private static List<Path> files(String language) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> words = Files.list(WORDS.resolve(language)); Stream<Path> messages = Files.list(MESSAGES)) {
            words.forEach(files::add);
            messages.filter(file -> language.equals(languageOf(file))).forEach(files::add);
        }
        return files;
    }

    private static String languageOf(Path bundle) {
        String name = bundle.getFileName().toString().replace(".properties", "");
        return name.contains("_") ? name.substring(name.indexOf('_') + 1) : FIRST;
    }

    @ParameterizedTest
    @MethodSource("languages")
    @DisplayName("no file says a thing with a word its glossary forbids")
    void everyFileSaysEachThingWithItsOneWord(String language) throws IOException {
        List<String> others = new ArrayList<>();
        for (Entry entry : glossary(language)) {
            for (Path file : files(language)) {
                Files.readAllLines(file).stream().filter(line -> !line.strip().startsWith("#"))
                    .filter(line -> !entry.exempts(file) && entry.speaksIn(line))
                    .map(line -> "%s: %s is '%s': %s".formatted(file.getFileName(), entry.thing, entry.word,
                        line.strip()))
                    .forEach(others::add);
            }
        }
        assertThat(others).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("languages")
    @DisplayName("no glossary forbids the word it asks for")
    void noGlossaryForbidsItsOwnWord(String language) throws IOException {
        assertThat(glossary(language)).isNotEmpty()
            .allSatisfy(entry -> assertThat(entry.speaksIn(entry.word)).as(entry.thing).isFalse());
    }

    @Test
    @DisplayName("a forbidden word is found in a sentence and not in a key, and its exception holds for the named file alone")
    void theGlossaryIsReadAsItSays() {
        Entry entry = Entry.of("new growth | new growth | regrowth|roots only | law.yaml: the words of the law");
        assertThat(entry.speaksIn("  client: We work on the regrowth.")).isTrue();
        assertThat(entry.speaksIn("      colour-regrowth: New growth")).isFalse();
        assertThat(entry.speaksIn("zone_regrowth=New growth")).isFalse();
        assertThat(entry.exempts(Path.of("law.yaml"))).isTrue();
        assertThat(entry.exempts(Path.of("findings.yaml"))).isFalse();
    }
}
