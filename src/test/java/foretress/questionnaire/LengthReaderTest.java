package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Length;
import foretress.questionnaire.Question.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthReaderTest {
    private final Question hair = question("hair", Kind.HAIR_LENGTH);

    private FormReading length(String typed, String unit) {
        return read(hair, "hair.cm", typed, "hair.unit", unit, "hair.straight", "yes");
    }

    @ParameterizedTest
    @CsvSource({
        "40, cm, 40", "1, cm, 1", "200, cm, 200", "'40,5', cm, 41", "40.1, cm, 41", "0.5, cm, 1", "٤٠٫٥, cm, 41",
        "40 cm, cm, 40", "40CM, cm, 40",
        // 1 inch is 2.54 cm exactly (international yard and pound agreement, 1959); rounded up
        "1, in, 3", "10, in, 26", "16, in, 41", "50, in, 127", "78, in, 199", "16 in, in, 41", "0.25, in, 1",
    })
    void lengthsAreReadInTheirUnitAndRoundedUp(String typed, String unit, int cm) {
        assertSays(length(typed, unit), new Length(cm, true));
    }

    @ParameterizedTest
    @CsvSource({ "0, cm, 200", "201, cm, 200", "200.1, cm, 200", "999999, cm, 200", "0, in, 78", "79, in, 78" })
    void lengthsBeyondTheBordersNameThem(String typed, String unit, String most) {
        assertRefuses(length(typed, unit), "hair.cm", "length-out-of-range", typed, "1", most, unit);
    }

    @ParameterizedTest
    @ValueSource(strings = { "long", "-40", "4 0", "40 in", "1.2.3", "40.", "1e2", "½", "40 metres", "٤x" })
    void whatIsNoLengthIsRefused(String typed) {
        assertRefuses(length(typed, "cm"), "hair.cm", "not-a-length", typed);
    }

    @Test
    void hairNotDrawnStraightCountsAsNotDrawnStraight() {
        assertSays(read(hair, "hair.cm", "30", "hair.straight", "no"), new Length(30, false));
        assertSays(read(hair, "hair.cm", "30", "hair.straight", "dont-know"), new Length(30, false));
    }

    @Test
    void whetherItWasDrawnStraightMustBeSaid() {
        assertRefuses(read(hair, "hair.cm", "30"), "hair.straight", "required");
    }

    @Test
    void withoutAUnitItIsCentimetres() {
        assertSays(read(hair, "hair.cm", "30", "hair.straight", "yes"), new Length(30, true));
    }

    @Test
    void notKnowingIsAnAnswerButNotBesideALength() {
        assertSays(read(hair, "hair", "dont-know", "hair.unit", "cm"), Answer.DONT_KNOW);
        assertRefuses(read(hair, "hair", "dont-know", "hair.cm", "30"), "hair", "none-and-others", "dont-know");
    }

    @Test
    void nothingSaidIsRequired() {
        assertRefuses(read(hair, "hair.straight", "yes", "hair.unit", "cm"), "hair.cm", "required");
    }

    @Test
    void forgedUnitsAndDoubledLengthsAreRefused() {
        assertThat(read(hair, "hair.cm", "30", "hair.unit", "ell", "hair.straight", "yes").mistakes())
            .contains(new AnswerMistake("hair.unit", "not-offered", List.of("ell")));
        assertThat(read(hair, "hair.cm", "30", "hair.cm", "3", "hair.straight", "yes").mistakes())
            .containsExactly(new AnswerMistake("hair.cm", "doubled", List.of()));
    }
}
