package foretress.web;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.knowledge.PluralForm;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Wherever English has one form beside one and another beside many, every language has exactly the forms that CLDR names for it. */
class CountsInEveryLanguageTest {
    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    private static final Path WORDS = Path.of("src/main/knowledge/words");
    /** A plural in a bundle, one in the words, and the short way of the bundles of staff, whose languages have two forms. */
    private static final Pattern IN_BUNDLE =
        Pattern.compile("\\{#when \\w+\\.plural\\('(\\w+)'\\)}((?:\\{#is \\w+}(?:(?!\\{#is|\\{#else).)+)+)\\{#else}");
    private static final Pattern IS = Pattern.compile("\\{#is (\\w+)}");
    private static final Pattern IN_WORDS = Pattern.compile("\\{\\w+, plural,((?: \\w+ \\{[^{}]*})+)}");
    private static final Pattern FORM = Pattern.compile("(\\w+) \\{");
    private static final Pattern OF_STAFF = Pattern.compile("\\{#(?:else )?if \\w+ == 1L?}");
    /** A bare number before a noun in its plural, where nothing asks whether it is one. */
    private static final Pattern ASKED =
        Pattern.compile("\\{#(when|if)(?:(?!\\{/\\1}).)*(?:plural|== 1|is 1})(?:(?!\\{/\\1}).)*\\{/\\1}");
    private static final Pattern BARE =
        Pattern.compile("\\{\\w+} (?:seconds|minutes|hours|days|weeks|months|years|levels"
            + "|photos|questions|answers|findings|topics|visits|entries|drops)\\b");

    record Sentence(String language, String place, String text) {
        /** Every plural in it, as the forms it names. */
        List<Set<String>> plurals() {
            List<Set<String>> all = new ArrayList<>();
            IN_WORDS.matcher(text).results().forEach(plural -> all.add(FORM.matcher(plural.group(1)).results()
                .map(form -> form.group(1)).collect(Collectors.toCollection(TreeSet::new))));
            IN_BUNDLE.matcher(text).results().forEach(plural -> all.add(named(plural.group(2), plural.group(1))));
            OF_STAFF.matcher(text).results().forEach(one -> all.add(new TreeSet<>(Set.of("one", "other"))));
            return all;
        }

        /** Those named, and the one that else stands for. */
        private Set<String> named(String forms, String said) {
            assertThat(said).as(place).isEqualTo(language);
            Set<String> named = IS.matcher(forms).results().map(form -> form.group(1).toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
            Set<String> left = new TreeSet<>(forms(language));
            left.removeAll(named);
            assertThat(left).as("%s: what else stands for, in %s", place, language).hasSize(1);
            named.addAll(left);
            return named;
        }
    }

    private static Set<String> forms(String language) {
        return IntStream.rangeClosed(0, 1_000).mapToObj(count -> PluralForm.of(language, count))
            .map(form -> form.name().toLowerCase(Locale.ROOT)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** By place, then by language. */
    private static Map<String, Map<String, Sentence>> sentences() {
        Map<String, Map<String, Sentence>> all = new TreeMap<>();
        Stream.concat(bundles(), words())
            .forEach(one -> all.computeIfAbsent(one.place(), any -> new HashMap<>()).put(one.language(), one));
        return all;
    }

    private static Stream<Sentence> bundles() {
        return files(MESSAGES).flatMap(file -> {
            String[] name = file.getFileName().toString().replace(".properties", "").split("_");
            String language = name.length > 1 ? name[1] : "en";
            return lines(file).filter(line -> line.contains("="))
                .map(line -> new Sentence(language, name[0] + ":" + line.substring(0, line.indexOf('=')), line));
        });
    }

    /** A YAML line is known by its file, and by its key and how often that came before. */
    private static Stream<Sentence> words() {
        return Supported.TAGS.stream().flatMap(language -> files(WORDS.resolve(language)).flatMap(file -> {
            Map<String, Integer> before = new HashMap<>();
            return lines(file).filter(line -> line.matches("\\s*[\\w-]+: .*plural,.*")).map(line -> {
                String key = line.strip().substring(0, line.strip().indexOf(':'));
                return new Sentence(language, file.getFileName() + ":" + key + before.merge(key, 1, Integer::sum),
                    line);
            });
        }));
    }

    static Stream<Sentence> counting() {
        return sentences().values().stream().flatMap(place -> place.values().stream())
            .filter(one -> !one.plurals().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("counting")
    @DisplayName("A29: a sentence that counts has the forms of its language, none more and none fewer")
    void theFormsAreThoseOfTheLanguage(Sentence sentence) {
        Set<String> icus = new TreeSet<>(forms(sentence.language()));
        icus.add("other"); // ICU asks for it; in Polish it is said of parts of a whole
        assertThat(sentence.plurals()).as(sentence.toString())
            .allSatisfy(named -> assertThat(named).isIn(forms(sentence.language()), icus));
    }

    @Test
    @DisplayName("A29: what counts in English counts in every language that has more than one form")
    void everyLanguageCounts() {
        List<String> missing = new ArrayList<>();
        sentences().forEach((place, all) -> {
            if (!all.containsKey("en") || all.get("en").plurals().isEmpty()) {
                return;
            }
            Stream<String> others = place.contains(".yaml") ? Supported.TAGS.stream() : all.keySet().stream();
            others.filter(language -> forms(language).size() > 1)
                .filter(language -> !all.containsKey(language) || all.get(language).plurals().isEmpty())
                .forEach(language -> missing.add(language + " " + place));
        });
        assertThat(missing).isEmpty();
        assertThat(sentences()).hasSizeGreaterThan(1_000);
    }

    @Test
    @DisplayName("A29: no English sentence puts a bare number before a plural, but for numbers that are always many")
    void noBareNumber() throws IOException {
        List<String> always = Files.readAllLines(Path.of("src/test/reviewed/always-many.txt")).stream()
            .filter(line -> !line.startsWith("#") && !line.isBlank()).map(line -> line.split(" \\| ")[0].strip())
            .toList();
        assertThat(bundles()
            .filter(one -> one.language().equals("en") && BARE.matcher(ASKED.matcher(one.text()).replaceAll("")).find())
            .map(Sentence::place).sorted().toList()).isEqualTo(always.stream().sorted().toList());
    }

    private static Stream<Path> files(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream().filter(line -> !line.strip().startsWith("#"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
