package foretress.consent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConsentWordsTest {
    private static final Pattern PLACE = Pattern.compile("\\{([A-Za-z]+)(?:}|, plural)");
    private static final ConsentWords ENGLISH = ConsentWords.in("en");

    private static Iterable<String> places(String sentence) {
        return new TreeSet<>(PLACE.matcher(sentence).results().map(place -> place.group(1)).toList());
    }

    @Test
    void aLanguageWithoutWordsIsReadInEnglish() {
        assertThat(ConsentWords.in("de").language()).isEqualTo("en");
        assertThat(ConsentWords.in("es-MX").language()).isEqualTo("es");
    }

    @ParameterizedTest
    @ValueSource(strings = { "es", "fr", "pl", "ar", "vi" })
    void everyLanguageHasEverySentenceAndEveryPlace(String language) {
        Map<String, String> drafted = ConsentWords.in(language).sentences();
        assertThat(drafted.keySet()).isEqualTo(ENGLISH.sentences().keySet());
        ENGLISH.sentences()
            .forEach((key, sentence) -> assertThat(places(drafted.get(key))).as(key).isEqualTo(places(sentence)));
        assertThat(drafted.get("version")).isEqualTo(ENGLISH.say("version"));
    }

    @Test
    void aPlaceNobodyFilledIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> ENGLISH.say("statements.tests", Map.of()))
            .withMessageContaining("{tests}");
        assertThatIllegalArgumentException().isThrownBy(() -> ENGLISH.say("no-such")).withMessageContaining("no-such");
    }

    @Test
    void whatIsFilledInIsNotReadAsAPlace() {
        assertThat(ENGLISH.say("statements.tests", Map.of("tests", "{date} $1"))).contains("{date} $1");
    }

    /** Flesch-Kincaid grade: 0.39 words/sentence + 11.8 syllables/word - 15.59 (Kincaid and others 1975; from memory). */
    @Test
    @DisplayName("A21: the English consent and notice read at grade 8 or below")
    void englishReadsAtGradeEight() {
        Measured measured = Measured.of(prose(ENGLISH), Pattern.compile("[aeiouy]+"), true);
        assertThat(0.39 * measured.wordsASentence() + 11.8 * measured.syllablesAWord() - 15.59).isLessThan(8);
    }

    /** Szigriszt's perspicuity, 206.835 - 62.3 syllables/word - words/sentence; from 55 "normal" (INFLESZ scale; from memory). */
    @Test
    @DisplayName("A21: the Spanish consent and notice read easily on their own scale")
    void spanishReadsEasily() {
        Measured measured = Measured.of(prose(ConsentWords.in("es")), Pattern.compile("[aeiouáéíóúü]+"), false);
        assertThat(206.835 - 62.3 * measured.syllablesAWord() - measured.wordsASentence()).isGreaterThan(60);
    }

    @ParameterizedTest
    @ValueSource(strings = { "en", "es" })
    @DisplayName("A21: a sentence has at most 32 words, a statement to sign at most 25")
    void sentencesAreShort(String language) {
        prose(ConsentWords.in(language)).flatMap(text -> Stream.of(text.split("(?<=[.!?:;])\\s+")))
            .forEach(sentence -> assertThat(sentence.split("\\s+").length).as(sentence).isLessThanOrEqualTo(32));
        ConsentWords.in(language).sentences().forEach((key, text) -> {
            if (key.startsWith("statements.")) {
                Stream.of(text.split("(?<=[.!?:;])\\s+")).forEach(
                    sentence -> assertThat(sentence.split("\\s+").length).as(sentence).isLessThanOrEqualTo(25));
            }
        });
    }

    /** What is read as prose; the clause of law in brackets stands for the lawyer. */
    private static Stream<String> prose(ConsentWords words) {
        return words.sentences().entrySet().stream()
            .filter(
                entry -> Stream.of("statements.", "limits.", "cautions.", "take-back.", "urgent.", "notice.", "found.")
                    .anyMatch(entry.getKey()::startsWith))
            .map(entry -> entry.getValue().replaceAll("\\([^)]*\\)", "")).filter(text -> text.matches(".*[.?]"));
    }

    private record Measured(double words, double sentences, double syllables) {
        double wordsASentence() {
            return words / sentences;
        }

        double syllablesAWord() {
            return syllables / words;
        }

        static Measured of(Stream<String> texts, Pattern vowels, boolean silentE) {
            int words = 0;
            int sentences = 0;
            int syllables = 0;
            for (String text : texts.toList()) {
                sentences += text.split("[.!?:;]+(\\s|$)").length;
                for (String word : text.toLowerCase(java.util.Locale.ROOT).split("[^\\p{L}]+")) {
                    if (!word.isEmpty()) {
                        words++;
                        syllables += syllables(
                            silentE && word.length() > 3 ? word.replaceAll("(?<![laeiou])(e|es|ed)$", "") : word,
                            vowels);
                    }
                }
            }
            return new Measured(words, sentences, syllables);
        }

        private static long syllables(String word, Pattern vowels) {
            return Math.max(1, vowels.matcher(word).results().count());
        }
    }
}
