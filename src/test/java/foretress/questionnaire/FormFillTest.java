package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Length;
import foretress.questionnaire.Answer.Said;
import foretress.questionnaire.Answer.Text;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FormFillTest {
    private static Stream<Arguments> answers() {
        return Stream.of(
            Arguments.of(Kind.ONE_OF, Chosen.of("yes")),
            Arguments.of(Kind.ONE_OF, Answer.DONT_KNOW),
            Arguments.of(Kind.ONE_OF, Answer.RATHER_NOT_SAY),
            Arguments.of(Kind.SEVERAL_OF, Chosen.of("yes", "no")),
            Arguments.of(Kind.SAID_DATE, new Said(new OnDay(LocalDate.of(2024, 2, 29)))),
            Arguments.of(Kind.SAID_DATE, new Said(new InMonth(YearMonth.of(2024, 12)))),
            Arguments.of(Kind.SAID_DATE, new Said(new InSeason(Season.AUTUMN, Year.of(2023)))),
            Arguments.of(Kind.SAID_DATE, new Said(new InYear(Year.of(1999)))),
            Arguments.of(Kind.SAID_DATE, new Said(new YearsAgo(2, 3))),
            Arguments.of(Kind.SAID_DATE, new Said(new LatelyAgo(3, 6, LatelyAgo.Unit.MONTHS))),
            Arguments.of(Kind.SAID_DATE, new Said(new LongerThan(5))),
            Arguments.of(Kind.SAID_DATE, Answer.DONT_KNOW),
            Arguments.of(Kind.SAID_DATE, Answer.RATHER_NOT_SAY),
            Arguments.of(Kind.HAIR_LENGTH, new Length(41, true)),
            Arguments.of(Kind.HAIR_LENGTH, new Length(200, false)),
            Arguments.of(Kind.HAIR_LENGTH, Answer.DONT_KNOW),
            Arguments.of(Kind.TREATMENTS, new Answer.Treatments(List.of())),
            Arguments.of(Kind.MEDICINES, new Answer.Medicines(List.of())),
            Arguments.of(Kind.INGREDIENTS, new Text("Aqua,\nCI 77891")),
            Arguments.of(Kind.NOTE, new Text("«rizos» 👩🏽‍🦱")));
    }

    @ParameterizedTest
    @MethodSource("answers")
    void anAnswerShownAgainAndSentBackIsTheSameAnswer(Kind kind, Answer answer) {
        var question =
            new Question("q", kind, List.of("yes", "no"), true, true, Set.of(), Map.of(), true, Keeps.THE_DAY, false);
        FormReading reading = new FormReader(LocalDate.of(2026, 3, 15)).read(List.of(question),
            FormFill.fields(question, answer), Answers.NONE);
        assertThat(reading.mistakes()).isEmpty();
        assertThat(reading.answers().to("q")).contains(answer);
    }
}
