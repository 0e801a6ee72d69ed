package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Question.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingSeveralOfTest {
    private final Question signs = question("signs", Kind.SEVERAL_OF, "itch", "hives", "faint", "none");

    @Test
    void codesComeInTheOrderOfTheQuestion() {
        assertSays(read(signs, "signs", "faint", "signs", "itch"), Chosen.of("itch", "faint"));
    }

    @Test
    void theSameCodeTwiceIsSaidOnce() {
        assertSays(read(signs, "signs", "itch", "signs", "itch"), Chosen.of("itch"));
    }

    @Test
    void noneAloneIsAnAnswer() {
        assertSays(read(signs, "signs", "none"), Chosen.of("none"));
    }

    @ParameterizedTest
    @ValueSource(strings = { "none", "dont-know", "rather-not-say" })
    void whatStandsAloneIsRefusedBesideOthers(String alone) {
        assertRefuses(read(signs, "signs", "hives", "signs", alone), "signs", "none-and-others", alone);
        assertRefuses(read(signs, "signs", alone, "signs", "hives"), "signs", "none-and-others", alone);
    }

    @Test
    void notKnowingAloneIsAnAnswer() {
        assertSays(read(signs, "signs", "dont-know"), Answer.DONT_KNOW);
        assertSays(read(signs, "signs", "rather-not-say"), Answer.RATHER_NOT_SAY);
    }

    @Test
    void oneForgedCodeRefusesTheWholeAnswer() {
        assertRefuses(read(signs, "signs", "hives", "signs", "wings"), "signs", "not-offered", "wings");
    }

    @Test
    void nothingTickedIsNotNone() {
        assertRefuses(read(signs), "signs", "required");
    }
}
