package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class WalkTest {
    private static final Question COLOURED = asked("coloured", Map.of(), true);
    private static final Question FADED = asked("faded", Map.of(), true);
    private static final Question LIST = asked("list", Map.of("coloured", List.of("yes")), false);
    private static final Question LATER = asked("later", Map.of(), true);
    private static final Topic COLOUR = new Topic("colour", List.of(COLOURED, LIST, FADED));
    private static final Topic LAST = new Topic("last", List.of(LATER));
    private static final Questionnaire QUESTIONS = new Questionnaire(List.of(COLOUR, LAST));

    private static Question asked(String id, Map<String, List<String>> when, boolean required) {
        return new Question(id, Kind.ONE_OF, List.of("yes", "no"), true, false, Set.of(), when, required, Keeps.THE_DAY,
            false);
    }

    private static Walk walk(Map<String, String> said, String... put) {
        Answers answers = Answers.NONE;
        for (Map.Entry<String, String> one : said.entrySet()) {
            answers = answers.with(one.getKey(), Chosen.of(one.getValue()));
        }
        return new Walk(QUESTIONS, Set.of(), answers, Set.of(put));
    }

    private static List<String> ids(Walk.Step step) {
        return step.questions().stream().map(Question::id).toList();
    }

    @Test
    void theFirstPageAsksWhatNoAnswerHasToOpen() {
        Walk.Step first = walk(Map.of()).next().orElseThrow();
        assertThat(ids(first)).containsExactly("coloured", "faded");
        assertThat(first.opened()).isFalse();
    }

    @Test
    @DisplayName("R2, R7: an optional question that an answer opens on the same page is asked next, alone")
    void whatAnAnswerOpensComesNextAndAlone() {
        Walk.Step next =
            walk(Map.of("coloured", "yes", "faded", "no"), "coloured", "faded").after(COLOUR).orElseThrow();
        assertThat(ids(next)).containsExactly("list");
        assertThat(next.opened()).isTrue();
    }

    @Test
    void anOptionalQuestionLeftEmptyIsNotAskedAgain() {
        Walk walk = walk(Map.of("coloured", "yes", "faded", "no"), "coloured", "faded", "list");
        assertThat(walk.after(COLOUR).map(Walk.Step::topic)).contains(LAST);
        assertThat(walk.waiting()).containsExactly(LATER);
    }

    @Test
    void aNoOpensNothing() {
        Walk walk = walk(Map.of("coloured", "no", "faded", "no"), "coloured", "faded");
        assertThat(walk.after(COLOUR).map(Walk.Step::topic)).contains(LAST);
        assertThat(ids(walk.page(COLOUR, true))).containsExactly("coloured", "faded");
    }

    @Test
    void whoComesBackToAPageOfOpenedQuestionsFindsThemThere() {
        Walk walk = walk(Map.of("coloured", "yes", "faded", "no", "list", "no", "later", "no"), "coloured", "faded",
            "list", "later");
        assertThat(walk.next()).isEmpty();
        assertThat(ids(walk.page(COLOUR, true))).containsExactly("list");
        assertThat(ids(walk.page(COLOUR, false))).containsExactly("coloured", "list", "faded");
    }

    @Test
    void aRequiredQuestionThatWasPutAndNotAnsweredStillWaits() {
        assertThat(walk(Map.of("coloured", "no"), "coloured", "faded").waiting()).containsExactly(FADED, LATER);
    }

    @Test
    void theReasonForAskingIsTheQuestionOnTheSamePage() {
        assertThat(walk(Map.of()).openers(COLOUR, LIST)).containsExactly(COLOURED);
        assertThat(walk(Map.of()).openers(COLOUR, FADED)).isEmpty();
    }

    @Test
    void afterATopicComesTheNextInOrderAndWhatWasPassedOverOnlyAtTheEnd() {
        var middle = new Topic("middle", List.of(asked("middle", Map.of(), false)));
        var all = new Questionnaire(List.of(COLOUR, middle, LAST));
        var walk = new Walk(all, Set.of(), Answers.NONE, Set.of("middle"));
        assertThat(walk.after(middle).map(Walk.Step::topic)).contains(LAST);
        assertThat(walk.after(LAST).map(Walk.Step::topic)).as("the end: back to what still waits").contains(COLOUR);
    }
}
