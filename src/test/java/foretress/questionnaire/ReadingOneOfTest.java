package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.optional;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Question.Kind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingOneOfTest {
    private final Question itch = question("itch", Kind.ONE_OF, "yes", "no");

    @ParameterizedTest
    @ValueSource(strings = { "yes", "no" })
    void anOfferedCodeIsTaken(String code) {
        assertSays(read(itch, "itch", code), Chosen.of(code));
    }

    @Test
    void notKnowingAndNotSayingAreAnswersOfTheirOwn() {
        assertSays(read(itch, "itch", "dont-know"), Answer.DONT_KNOW);
        assertSays(read(itch, "itch", "rather-not-say"), Answer.RATHER_NOT_SAY);
    }

    @Test
    @DisplayName("A20 a blank is never a no")
    void aBlankIsNoAnswer() {
        assertRefuses(read(itch), "itch", "required");
        assertRefuses(read(itch, "itch", ""), "itch", "required");
        assertRefuses(read(itch, "itch", "  "), "itch", "required");
    }

    @Test
    void anOptionalQuestionMayStayBlank() {
        FormReading reading = read(optional("itch", Kind.ONE_OF, "yes", "no"));
        assertThat(reading.clean()).isTrue();
        assertThat(reading.answers()).isEqualTo(Answers.NONE);
    }

    @ParameterizedTest
    @ValueSource(strings = { "maybe", "YES", " yes", "yes ", "none", "<b>" })
    void aForgedCodeIsRefused(String code) {
        assertRefuses(read(itch, "itch", code), "itch", "not-offered", code.strip());
    }

    @Test
    void aCodeWithANulBehindItIsForged() {
        assertRefuses(read(itch, "itch", "yes\0"), "itch", "not-offered", "yes");
    }

    @Test
    void notSayingIsRefusedWhereItIsNotOffered() {
        Question plain = optional("itch", Kind.ONE_OF, "yes", "no");
        assertRefuses(read(plain, "itch", "dont-know"), "itch", "not-offered", "dont-know");
        assertRefuses(read(plain, "itch", "rather-not-say"), "itch", "not-offered", "rather-not-say");
    }

    @Test
    @DisplayName("B24 doubled fields are refused")
    void twoValuesAreNotOne() {
        assertRefuses(read(itch, "itch", "yes", "itch", "no"), "itch", "doubled");
        assertRefuses(read(itch, "itch", "no", "itch", "no"), "itch", "doubled");
    }

    @Test
    void aLongForgedCodeIsRepeatedOnlyInPart() {
        assertRefuses(read(itch, "itch", "x".repeat(10_000)), "itch", "not-offered", "x".repeat(40) + "…");
    }
}
