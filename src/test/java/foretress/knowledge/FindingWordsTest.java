package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import foretress.assessment.Rule;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the client reads of a finding: short sentences and everyday words, to the measures the questionnaire keeps to. */
class FindingWordsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    /** House limits: the whole like the questionnaire, a single finding like a consent. */
    private static final int GRADE_OF_ALL = 6;
    private static final int GRADE_OF_ONE = 8;
    private static final int SPANISH_EASE_OF_ALL = 70;

    @Test
    void theFindingsTogetherReadEasilyInEnglish() {
        assertThat(ReadingAge.englishGrade(all("en"))).isLessThanOrEqualTo(GRADE_OF_ALL);
    }

    @Test
    void theFindingsTogetherReadEasilyInSpanish() {
        assertThat(ReadingAge.spanishEase(all("es"))).isGreaterThanOrEqualTo(SPANISH_EASE_OF_ALL);
    }

    @ParameterizedTest
    @MethodSource("english")
    void eachFindingReadsEasily(String rule, String sentence, String language) {
        assertThat(ReadingAge.englishGrade(sentence)).as(sentence).isLessThanOrEqualTo(GRADE_OF_ONE);
    }

    @ParameterizedTest
    @MethodSource("everyLanguage")
    void noSentenceIsLong(String rule, String text, String language) {
        ReadingAge.sentences(text).forEach(sentence -> assertThat(ReadingAge.words(sentence)).as(sentence)
            .hasSizeLessThanOrEqualTo(ReadingAge.longestSentence(language)));
    }

    static Stream<Arguments> english() {
        return read("en");
    }

    static Stream<Arguments> everyLanguage() {
        return KNOWLEDGE.languages().stream().flatMap(FindingWordsTest::read);
    }

    private static Stream<Arguments> read(String language) {
        return KNOWLEDGE.ruleSet().rules().stream().map(Rule::id).flatMap(id -> Stream.concat(Stream.of(false, true)
            .map(unsure -> KNOWLEDGE.words(language).finding(id, unsure).client()), forSteps(language, id)).distinct()
            .map(text -> arguments(id, text, language)));
    }

    private static Stream<String> forSteps(String language, String rule) {
        return KNOWLEDGE.words(language).own().stream()
            .filter(
                path -> path.startsWith("findings." + rule + ".") && path.contains(".for.") && path.endsWith(".client"))
            .map(KNOWLEDGE.words(language)::text);
    }

    private static String all(String language) {
        return read(language).map(arguments -> (String) arguments.get()[1]).collect(Collectors.joining(" "));
    }
}
