package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingAgeTest {
    @Test
    void thePlatypusSentenceHasTheGradeItIsKnownFor() {
        // A worked example of the encyclopaedias: 13 words, 24 syllables, grade 11.3 (from memory)
        String platypus = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";
        assertThat(ReadingAge.englishGrade(platypus)).isCloseTo(11.3, within(0.1));
    }

    @ParameterizedTest
    @CsvSource({ "cat, 1", "colour, 2", "rinsed, 1", "itched, 1", "treated, 2", "bottle, 2", "smile, 1", "reaction, 3",
        "henna, 2", "the, 1", "hair, 1" })
    void englishSyllablesAreCounted(String word, int syllables) {
        assertThat(ReadingAge.englishSyllables(word)).isEqualTo(syllables);
    }

    @ParameterizedTest
    @CsvSource({ "pelo, 2", "tinte, 2", "reacción, 3", "piel, 1", "queratina, 4", "decoloración, 5", "guantes, 2",
        "día, 2", "oído, 3", "aún, 2", "y, 1" })
    void spanishSyllablesAreCounted(String word, int syllables) {
        assertThat(ReadingAge.spanishSyllables(word)).isEqualTo(syllables);
    }

    @Test
    void longSentencesAndLongWordsAreHarder() {
        assertThat(ReadingAge.englishGrade(
            "Manufacturer's instructions necessitate preliminary dermatological sensitivity examination."))
            .isGreaterThan(ReadingAge.englishGrade("We test your skin first.") + 10);
    }
}
