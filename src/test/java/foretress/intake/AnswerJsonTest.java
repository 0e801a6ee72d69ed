package foretress.intake;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Treatments;
import foretress.questionnaire.Answers;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.YearsAgo;
import foretress.questionnaire.SaidTreatment;
import java.nio.charset.StandardCharsets;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import org.junit.jupiter.api.Test;

class AnswerJsonTest {
    private static final String BEFORE_REPEATS_WERE_ASKED =
        """
        {"treatments":{"treatments":[{"what":"perm","when":{"year":2023},"zone":"whole","by":"home","often":"regularly"}]}}""";

    private static Answers with(SaidTreatment treatment) {
        return Answers.NONE.with("treatments", new Treatments(List.of(treatment)));
    }

    @Test
    void aRepeatedTreatmentIsReadAsItWasWritten() {
        Answers said = with(new SaidTreatment("box-dye", new InMonth(YearMonth.of(2026, 3)), "regrowth", "home",
            "regularly", "6-weeks", new YearsAgo(2, 3)));
        assertThat(AnswerJson.read(AnswerJson.write(said))).isEqualTo(said);
    }

    @Test
    void whatWasSaidInWeeksOrMonthsIsReadAsItWasWritten() {
        Answers said = with(new SaidTreatment("box-dye", new LatelyAgo(3, 6, LatelyAgo.Unit.MONTHS), "regrowth", "home",
            "regularly", "6-months", new LatelyAgo(2, 4, LatelyAgo.Unit.WEEKS)));
        assertThat(AnswerJson.read(AnswerJson.write(said))).isEqualTo(said);
    }

    @Test
    void answersSealedBeforeRepeatsWereAskedAreReadAsNotKnownAndKeepTheirBytes() {
        byte[] sealed = BEFORE_REPEATS_WERE_ASKED.getBytes(StandardCharsets.UTF_8);
        Answers read = AnswerJson.read(sealed);
        assertThat(read).isEqualTo(with(new SaidTreatment("perm", new InYear(Year.of(2023)), "whole", "home",
            "regularly", "dont-know", new NotKnown())));
        assertThat(AnswerJson.write(read)).isEqualTo(sealed);
    }

    @Test
    void centimetresAreReadAsTheyWereWritten() {
        Answers said =
            with(new SaidTreatment("bleach", new InYear(Year.of(2025)), "ends", "salon", "once").reaching("10-cm"));
        assertThat(AnswerJson.read(AnswerJson.write(said))).isEqualTo(said);
    }
}
