package foretress.assessment;

import static foretress.assessment.Told.aClient;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.FactDef.Row;
import foretress.questionnaire.Answer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RowFactsTest {
    private static final FactDef SMELL = new FactDef("smell", List.of("none", "some", "strong"), List.of(
        new Row(2, Map.of("lotion", List.of("yes"), "smell", List.of("eggs"))),
        new Row(1, Map.of("lotion", List.of("yes")))), Optional.empty());

    @Test
    void theHeaviestRowThatHoldsGivesTheClass() {
        FactValue value = aClient().said("lotion", "yes").said("smell", "eggs").fact(SMELL);
        assertThat(value).hasToString("smell = strong");
        assertThat(value.causes()).containsExactlyInAnyOrder("lotion", "smell");
    }

    @Test
    void aQuestionClosedByANoTakesTheBestClass() {
        FactValue value = aClient().said("lotion", "no").fact(SMELL);
        assertThat(value).hasToString("smell = none");
        assertThat(value.causes()).containsExactly("lotion");
        assertThat(value.unanswered()).isEmpty();
    }

    /** The follow-up is never put after "don't know", and that must not read as a good answer to it. */
    @Test
    void aQuestionClosedByADontKnowIsNotKnown() {
        assertThat(aClient().said("lotion", Answer.DONT_KNOW).fact(SMELL)).hasToString("smell = none..strong");
    }

    @Test
    void dontKnowToTheFollowUpKeepsWhatTheFirstAnswerGave() {
        assertThat(aClient().said("lotion", "yes").said("smell", Answer.DONT_KNOW).fact(SMELL))
            .hasToString("smell = some..strong");
    }

    @Test
    void noAnswerIsNotKnownAndIsCounted() {
        FactValue value = aClient().fact(SMELL);
        assertThat(value).hasToString("smell = none..strong");
        assertThat(value.unanswered()).containsExactlyInAnyOrder("lotion", "smell");
        assertThat(value.notAsked()).isEmpty();
    }

    @Test
    void notAskedForTheServiceIsKeptApartFromNotAnswered() {
        FactValue value = aClient().booked("heat").fact(SMELL);
        assertThat(value).hasToString("smell = none..strong");
        assertThat(value.worstAsked()).isZero();
        assertThat(value.unanswered()).isEmpty();
        assertThat(value.notAsked()).extracting(NotAsked::question).containsExactlyInAnyOrder("lotion", "smell");
        assertThat(value.notAsked()).allMatch(q -> q.putFor(Told.LIGHTENER))
            .noneMatch(q -> q.putFor(java.util.Set.of("heat")));
    }

    @Test
    void anAnswerGivenAtTheChairCountsThoughTheServiceDidNotAsk() {
        FactValue value = aClient().booked("heat").said("lotion", "no").fact(SMELL);
        assertThat(value).hasToString("smell = none");
        assertThat(value.notAsked()).isEmpty();
    }

    /** An answer left over from before the client changed an earlier one. */
    @Test
    void aLeftOverAnswerToAClosedQuestionCountsNoLonger() {
        assertThat(aClient().said("lotion", "no").said("smell", "eggs").fact(SMELL)).hasToString("smell = none");
    }

    @Test
    void rowsAndAComputationTogetherGiveTheHeavier() {
        var both = new FactDef("restorer", List.of("none", "left", "said"),
            List.of(new Row(2, Map.of("smell", List.of("eggs")))),
            Optional
                .of(new FactDef.Computation(ComputedAs.LEFT, List.of("restorer"), Optional.empty(), Optional.empty())));
        assertThat(aClient().neverTreated().measured(40).said("lotion", "no").fact(both))
            .hasToString("restorer = none");
        assertThat(aClient().neverTreated().measured(40).said("lotion", "yes").said("smell", "sweet").fact(both))
            .hasToString("restorer = left");
        assertThat(aClient().neverTreated().measured(40).said("lotion", "yes").said("smell", "eggs").fact(both))
            .hasToString("restorer = said");
    }

    @Test
    void aFactThatFailsIsAFaultAndNotAGoodClass() {
        var broken = new FactDef("broken", List.of("none", "some"),
            List.of(new Row(1, Map.of("no-such-question", List.of("yes")))), Optional.empty());
        FactValue value = aClient().fact(broken);
        assertThat(value.fault()).contains("no question is called no-such-question");
        assertThat(value.isKnown()).isFalse();
    }
}
