package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Question.Status;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Which questions are put to whom")
class QuestionnaireStatusTest {
    private static final Set<String> DYE = Set.of("dye");
    private static final Question COLOURED = asked("coloured", Set.of("dye", "bleach"), Map.of(), true);
    private static final Question REACTED =
        asked("reacted", Set.of(), Map.of("coloured", List.of("yes", "dont-know")), true);
    private static final Question WHEN = asked("when", Set.of(), Map.of("reacted", List.of("yes")), true);
    private static final Question NOTE = asked("note", Set.of(), Map.of(), false);
    private static final Topic COLOUR = new Topic("colour", List.of(COLOURED, REACTED, WHEN));
    private static final Topic LAST = new Topic("last", List.of(NOTE));
    private static final Questionnaire ALL = new Questionnaire(List.of(COLOUR, LAST));

    private static Question asked(String id, Set<String> forSome, Map<String, List<String>> when, boolean required) {
        return new Question(id, Kind.ONE_OF, List.of("yes", "no"), true, false, forSome, when, required, Keeps.THE_DAY,
            false);
    }

    private static Answers said(String... questionsAndCodes) {
        Answers said = Answers.NONE;
        for (int i = 0; i < questionsAndCodes.length; i += 2) {
            said = said.with(questionsAndCodes[i], Chosen.of(questionsAndCodes[i + 1]));
        }
        return said;
    }

    @Test
    void aQuestionOfAnotherServiceIsNotPutNorWhatItWouldOpen() {
        assertThat(ALL.status(COLOURED, Set.of("perm"), Answers.NONE)).isEqualTo(Status.NOT_FOR_SERVICE);
        assertThat(ALL.status(REACTED, Set.of("perm"), Answers.NONE)).isEqualTo(Status.NOT_FOR_SERVICE);
        assertThat(ALL.status(COLOURED, Set.of("perm", "bleach"), Answers.NONE)).isEqualTo(Status.ASKED);
        assertThat(ALL.relevant(Set.of("perm"), Answers.NONE)).containsExactly(LAST);
        assertThat(ALL.relevant(DYE, Answers.NONE)).containsExactly(COLOUR, LAST);
    }

    @Test
    void whatWaitsForAnAnswerIsOpenAndPutLaterAndANoClosesIt() {
        assertThat(ALL.status(REACTED, DYE, Answers.NONE)).isEqualTo(Status.ASKED);
        assertThat(ALL.put(COLOUR, DYE, Answers.NONE)).containsExactly(COLOURED);
        assertThat(ALL.put(COLOUR, DYE, said("coloured", "yes"))).containsExactly(COLOURED, REACTED);
        assertThat(ALL.status(REACTED, DYE, said("coloured", "no"))).isEqualTo(Status.CLOSED);
        assertThat(ALL.status(WHEN, DYE, said("coloured", "no"))).as("closed all the way").isEqualTo(Status.CLOSED);
    }

    @Test
    void notKnowingClosesNothingThatItOpens() {
        Answers unsure = Answers.NONE.with("coloured", Answer.DONT_KNOW);
        assertThat(ALL.put(COLOUR, DYE, unsure)).containsExactly(COLOURED, REACTED);
        assertThat(Answer.DONT_KNOW.unknown()).isTrue();
        assertThat(Answer.RATHER_NOT_SAY.unknown()).isTrue();
        assertThat(Chosen.of("no").unknown()).isFalse();
        assertThat(Answer.RATHER_NOT_SAY.codes()).containsExactly("rather-not-say");
    }

    @Test
    void whatIsRequiredPutAndNotAnsweredIsMissing() {
        assertThat(ALL.missing(DYE, Answers.NONE)).as("an optional one is not").containsExactly(COLOURED);
        assertThat(ALL.missing(DYE, said("coloured", "yes"))).containsExactly(REACTED);
        assertThat(ALL.missing(DYE, said("coloured", "no"))).isEmpty();
    }

    @Test
    void anAnswerThatALaterOneClosedIsTakenAwayAndWithItWhatItHadOpened() {
        Answers before = said("coloured", "no", "reacted", "yes", "when", "yes", "note", "no");
        assertThat(ALL.stillOpen(DYE, before).byQuestion()).containsOnlyKeys("coloured", "note");
        Answers open = said("coloured", "yes", "reacted", "yes", "when", "yes");
        assertThat(ALL.stillOpen(DYE, open)).isEqualTo(open);
        assertThat(ALL.stillOpen(Set.of("perm"), open)).as("for another service nothing is closed").isEqualTo(open);
    }

    @Test
    void aTopicIsFoundByItsIdAndByAnyOfItsQuestions() {
        assertThat(ALL.topic("last")).contains(LAST);
        assertThat(ALL.topic("none")).isEmpty();
        assertThat(ALL.topicOf(Set.of("when", "note"))).as("the first as they are asked").contains(COLOUR);
        assertThat(ALL.topicOf(Set.of("note"))).contains(LAST);
        assertThat(ALL.topicOf(Set.of("nobody"))).isEmpty();
        assertThat(ALL.questions()).containsExactly(COLOURED, REACTED, WHEN, NOTE);
    }

    @Test
    void noTwoQuestionsHaveOneNameAndNoneWaitsForAQuestionThatDoesNotExist() {
        assertThatThrownBy(() -> new Questionnaire(List.of(LAST, LAST))).isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("note");
        Question lost = asked("lost", Set.of(), Map.of("nobody", List.of("yes")), true);
        assertThatThrownBy(() -> ALL.status(lost, DYE, Answers.NONE)).isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("nobody");
    }

    @Test
    void laterAnswersGoOverEarlierOnes() {
        assertThat(said("coloured", "no", "note", "yes").and(said("coloured", "yes")))
            .isEqualTo(said("coloured", "yes", "note", "yes"));
    }

    @Test
    void aContradictionNamesBothItsQuestions() {
        assertThat(new Contradiction("both", new Contradiction.Side("one", Set.of("yes")),
            new Contradiction.Side("other", Set.of("no"))).questions()).containsExactly("one", "other");
    }

    @Test
    void hairIsNoLongerThanHairGets() {
        assertThat(new Answer.Length(0, true).lengthCm()).isZero();
        assertThat(new Answer.Length(200, true).lengthCm()).isEqualTo(200);
        assertThatThrownBy(() -> new Answer.Length(201, true)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Answer.Length(-1, true)).isInstanceOf(IllegalArgumentException.class);
    }
}
