package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Question.Kind;
import java.time.Year;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a posted page came to")
class FormReadingTest {
    private static final Question COLOURED = question("coloured", Kind.ONE_OF, "yes", "no");
    private static final Answers EARLIER =
        Answers.NONE.with("coloured", Chosen.of("no")).with("coloured-when", Answer.DONT_KNOW);

    private static FormReading reading(Set<String> put, AnswerMistake... mistakes) {
        return new FormReading(Answers.NONE, List.of(mistakes), Map.of("coloured", List.of("perhaps")), put, false);
    }

    @Test
    void aPageWithAMistakeIsNotClean() {
        assertThat(reading(Set.of("coloured")).clean()).isTrue();
        assertThat(reading(Set.of("coloured"), new AnswerMistake("coloured", "required", List.of())).clean()).isFalse();
    }

    @Test
    void aQuestionLeftBlankIsNoLongerAnsweredAndOneWithAMistakeKeepsWhatItHad() {
        assertThat(reading(Set.of("coloured")).over(EARLIER).byQuestion()).containsOnlyKeys("coloured-when");
        assertThat(reading(Set.of("coloured"), new AnswerMistake("coloured", "required", List.of())).over(EARLIER))
            .isEqualTo(EARLIER);
        assertThat(reading(Set.of("coloured"), new AnswerMistake("coloured.act", "required", List.of())).over(EARLIER))
            .as("a mistake in one of its fields").isEqualTo(EARLIER);
    }

    @Test
    void aMistakeOfAQuestionWithALongerNameIsNotItsOwn() {
        var other = new AnswerMistake("coloured-when", "required", List.of());
        FormReading reading = reading(Set.of("coloured", "coloured-when"), other);
        assertThat(reading.over(EARLIER).byQuestion()).containsOnlyKeys("coloured-when");
        assertThat(reading.mistakesAt("coloured")).isEmpty();
        assertThat(reading.mistakesAt("coloured-when")).containsExactly(other);
    }

    @Test
    void whatWasSentIsShownAgain() {
        assertThat(reading(Set.of()).said("coloured")).isEqualTo("perhaps");
        assertThat(reading(Set.of()).said("never")).isEmpty();
        assertThat(reading(Set.of()).ticked("coloured", "perhaps")).isTrue();
        assertThat(reading(Set.of()).ticked("coloured", "yes")).isFalse();
        assertThat(reading(Set.of()).ticked("never", "yes")).isFalse();
    }

    @Test
    void ofAWordThatIsRepeatedFortyLettersAreShown() {
        assertRefuses(read(COLOURED, "coloured", "x".repeat(40)), "coloured", "not-offered", "x".repeat(40));
        assertRefuses(read(COLOURED, "coloured", "x".repeat(41)), "coloured", "not-offered", "x".repeat(40) + "…");
    }

    @Test
    void fourDigitsMakeAYear() {
        Question when = question("when", Kind.SAID_DATE);
        assertRefuses(read(when, "when.precision", "year", "when.year", "999"), "when.year", "not-a-year", "999");
        assertRefuses(read(when, "when.precision", "year", "when.year", "1000"), "when.year", "year-too-early", "1000",
            "1900");
        assertSays(read(when, "when.precision", "year", "when.year", "1900"),
            new Answer.Said(new SaidDate.InYear(Year.of(1900))));
    }

    @Test
    void aDateNobodyKnowsIsShownAgainAsNotKnown() {
        assertThat(FormFill.fields(question("when", Kind.SAID_DATE), new Answer.Said(new SaidDate.NotKnown())))
            .isEqualTo(Map.of("when.precision", List.of("dont-know")));
    }

    @Test
    void aMedicineTakesThePlaceOfNotKnowingAny() {
        Question medicines = question("medicines", Kind.MEDICINES);
        Answers before = Answers.NONE.with("medicines", Answer.DONT_KNOW);
        FormReading reading = read(medicines, before, "medicines.name", "cetirizine", "medicines.act", "done");
        assertThat(reading.answers().to("medicines")).contains(new Answer.Medicines(
            List.of(new Medicine("cetirizine", "not-asked", "not-asked", "not-asked"))));
    }
}
