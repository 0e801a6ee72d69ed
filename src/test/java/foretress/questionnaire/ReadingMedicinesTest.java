package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.questionnaire.Answer.Medicines;
import foretress.questionnaire.Question.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingMedicinesTest {
    private final Question taken = question("taken", Kind.MEDICINES);

    @Test
    void aMedicineIsTakenAsTyped() {
        assertSays(
            read(taken, "taken.act", "add", "taken.name", " Prednisolon\n 5 mg ", "taken.dose", "low", "taken.route",
                "mouth", "taken.last", "now"),
            new Medicines(List.of(new Medicine("Prednisolon 5 mg", "low", "mouth", "now"))));
    }

    @Test
    void whatIsNotSaidOfAMedicineWasNotAsked() {
        assertSays(read(taken, "taken.act", "done", "taken.name", "ميثوتريكسات 💊"),
            new Medicines(
                List.of(new Medicine("ميثوتريكسات 💊", Medicine.NOT_ASKED, Medicine.NOT_ASKED, Medicine.NOT_ASKED))));
    }

    @Test
    void bandsWithoutANameAreNoEntry() {
        assertRefuses(read(taken, "taken.act", "done", "taken.dose", "low"), "taken.name", "required");
    }

    @Test
    void aNameOfTwoHundredLettersIsTheLongest() {
        assertThat(read(taken, "taken.act", "add", "taken.name", "😀".repeat(200)).clean()).isTrue();
        assertRefuses(read(taken, "taken.act", "add", "taken.name", "😀".repeat(201)), "taken.name", "too-long", "200",
            "201");
    }

    @ParameterizedTest
    @CsvSource({ "taken.dose, huge", "taken.route, ear", "taken.last, never" })
    void forgedBandsAreRefused(String field, String code) {
        assertRefuses(read(taken, "taken.act", "add", "taken.name", "x", field, code), field, "not-offered", code);
    }

    @Test
    void noneAndNotSayingAreAnswers() {
        assertSays(read(taken, "taken", "none"), new Medicines(List.of()));
        assertSays(read(taken, "taken", "rather-not-say"), Answer.RATHER_NOT_SAY);
        assertSays(read(taken, "taken", "dont-know"), Answer.DONT_KNOW);
        assertRefuses(read(taken, "taken", "plenty"), "taken", "not-offered", "plenty");
    }

    @Test
    void theCodesOfBandsAreWhatAnswersAreStoredIn() {
        assertThat(Medicine.DOSES).containsExactly("low", "high", "dont-know", "not-asked");
        assertThat(Medicine.ROUTES).containsExactly("mouth", "skin", "skin-elsewhere", "scalp", "inhaled", "injection",
            "eye-nose", "dont-know", "not-asked");
        assertThat(Medicine.LAST_TAKEN).containsExactly("now", "week", "month", "longer", "dont-know", "not-asked");
        assertThat(Medicine.NOT_ASKED).isEqualTo("not-asked");
    }

    @ParameterizedTest
    @CsvSource({ "huge, mouth, now", "low, ear, now", "low, mouth, never", "LOW, mouth, now", "low, eye_nose, now" })
    void aMedicineOfABandThatIsNoneCannotBe(String dose, String route, String last) {
        assertThatThrownBy(() -> new Medicine("prednisolone", dose, route, last))
            .isInstanceOf(IllegalArgumentException.class).hasMessageStartingWith("no ");
    }
}
