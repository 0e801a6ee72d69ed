package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Service;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a client reads speaks of what she booked. The reviewed words stand in {@code src/test/reviewed/words-of-aims.txt}. */
@Execution(ExecutionMode.CONCURRENT)
class AimWordsTest {
    private static final Path REVIEWED = Path.of("src/test/reviewed/words-of-aims.txt");
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final List<Planned> WORDS = new ArrayList<>();
    private static final List<Told> TOLD = new ArrayList<>();

    static {
        read();
    }

    /** Words of something planned, and the aims, steps and chemistries of those who may read them. */
    private record Planned(String what, String language, Pattern pattern, Set<String> readers) {
        boolean wrongIn(String text, Service service) {
            return pattern.matcher(text).find() && has(service).stream().noneMatch(readers::contains);
        }
    }

    /** A phrase that tells of the past, or names what is left out: everybody may read it. */
    private record Told(String language, Pattern phrase) {}

    private static void read() {
        boolean words = true;
        for (String line : lines()) {
            String[] parts = line.split(" \\| ");
            if (parts.length == 1) {
                words = line.equals("words");
            } else if (words) {
                WORDS.add(new Planned(parts[0].strip(), parts[1].strip(), pattern(parts[2].strip()),
                    Set.of(parts[3].strip().split(" "))));
            } else {
                TOLD.add(new Told(parts[0].strip(), pattern(Pattern.quote(parts[1].strip()))));
            }
        }
        TOLD.sort(Comparator.comparing((Told told) -> told.phrase().pattern().length()).reversed());
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(REVIEWED).stream().filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex,
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    private static Set<String> has(Service service) {
        Set<String> has = new HashSet<>(service.aims());
        has.addAll(service.stepIds());
        has.addAll(service.chemistries());
        return has;
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("R19: no client reads in any text, of a finding or of a test, about a service of another aim than the one she booked")
    void everyTextSpeaksOfWhatIsBooked(String language) {
        var texts = new ClientTexts(KNOWLEDGE, language);
        Set<String> wrong = new TreeSet<>();
        for (Service service : texts.services()) {
            for (ClientTexts.Text text : texts.of(service)) {
                wrong.addAll(wrong(language, service, text.from(), text.said()));
            }
            texts.ofEveryConsent().forEach(text -> wrong.addAll(wrong(language, service, "consent", text)));
        }
        assertThat(wrong).isEmpty();
    }

    private static List<String> wrong(String language, Service service, String from, String said) {
        String planned = withoutTold(language, said);
        return WORDS.stream().filter(word -> word.language().equals(language) && word.wrongIn(planned, service))
            .map(word -> "%s %s reads of %s in %s: %s".formatted(language, service.stepIds(), word.what(), from, said))
            .toList();
    }

    private static String withoutTold(String language, String text) {
        String left = text;
        for (Told told : TOLD) {
            left = told.language().equals(language) ? told.phrase().matcher(left).replaceAll("…") : left;
        }
        return left;
    }

    @Test
    void everyReviewedPhraseIsStillReadSomewhere() {
        Set<String> all = new HashSet<>();
        for (String language : List.of("en", "es")) {
            var texts = new ClientTexts(KNOWLEDGE, language);
            texts.services().forEach(service -> texts.of(service).forEach(text -> all.add(language + text.said())));
        }
        assertThat(TOLD).allSatisfy(told -> assertThat(all)
            .anyMatch(text -> text.startsWith(told.language()) && told.phrase().matcher(text).find()));
    }

    @Test
    void everyAimStepAndChemistryNamedThereExistsAndEveryAimHasWordsOfItsOwn() {
        Set<String> known = new HashSet<>(KNOWLEDGE.aims());
        KNOWLEDGE.ruleSet().steps().forEach(step -> {
            known.add(step.id());
            known.addAll(step.uses());
        });
        assertThat(WORDS).isNotEmpty().allSatisfy(word -> assertThat(known).containsAll(word.readers()));
        assertThat(KNOWLEDGE.ruleSet().services().stream()
            .filter(service -> !isDry(service) && !service.aims().contains("care")))
            .allSatisfy(service -> assertThat(WORDS)
                .anyMatch(word -> has(service).stream().anyMatch(word.readers()::contains)));
    }

    private static boolean isDry(Service service) {
        return KNOWLEDGE.chemistries().dry(service.chemistries());
    }

    @Test
    @DisplayName("R19: a finding speaks by the aim of the service where it has words for it")
    void theSameFindingSaysAnotherThingForAnotherAim() {
        assertThat(said("reacted-to-colour", "fashion-colour")).contains("only if a letter").doesNotContain("toner");
        assertThat(said("reacted-to-colour", "highlights")).contains("no toner or other dye on you");
        assertThat(said("reacted-to-colour", "colour-whole")).contains("no permanent colour");
        assertThat(said("sting-not-yet-tested", "fashion-colour")).contains("rinse");
        assertThat(said("relaxed-lately", "relaxer-roots")).contains("the next relaxer");
        assertThat(said("reacted-to-perm-at-once", "straighten-keratin")).doesNotContain("lotion");
    }

    private static String said(String rule, String service) {
        return new ClientTexts(KNOWLEDGE, "en").of(KNOWLEDGE.ruleSet().service(service).orElseThrow()).stream()
            .filter(text -> text.from().equals(rule)).findFirst().orElseThrow().said();
    }
}
