package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Several questions as one list: what one tap says of all of them, and what a blank never says. */
class TickListTest {
    private static final Question STATE = question("state", Kind.SEVERAL_OF, false, "breaks", "sheds", "none");
    private static final Question WORN = question("worn", Kind.ONE_OF, false, "yes", "some-time-ago", "no");
    private static final Question BABY = question("baby", Kind.ONE_OF, true, "yes", "no");
    private static final List<Question> LIST = List.of(STATE, WORN, BABY);

    private static Question question(String id, Kind kind, boolean personal, String... options) {
        return new Question(id, kind, List.of(options), true, personal, Set.of(), Map.of(), true, Keeps.THE_DAY, false);
    }

    private static FormReading sent(Map<String, List<String>> ticked) {
        Map<String, List<String>> fields = new LinkedHashMap<>(ticked);
        fields.put("together", List.of("state", "worn", "baby"));
        return new FormReader(LocalDate.of(2026, 6, 10)).read(LIST, TickList.apart(LIST, fields), Answers.NONE);
    }

    @Test
    void noneOfTheseIsANoToEachOfThem() {
        Answers said = sent(Map.of("whole-list", List.of("none"))).answers();
        assertThat(said.to("state")).contains(Answer.Chosen.of("none"));
        assertThat(said.to("worn")).contains(Answer.Chosen.of("no"));
        assertThat(said.to("baby")).contains(Answer.Chosen.of("no"));
    }

    @Test
    void whatIsNotTickedInAListThatIsSentWithATickIsNotSo() {
        Answers said = sent(Map.of("worn", List.of("some-time-ago"))).answers();
        assertThat(said.to("worn")).contains(Answer.Chosen.of("some-time-ago"));
        assertThat(said.to("state")).contains(Answer.Chosen.of("none"));
    }

    @Test
    @DisplayName("a list left blank says no to nothing: each question is still to be answered")
    void aBlankIsNeverANo() {
        FormReading reading = sent(Map.of());
        assertThat(reading.answers().byQuestion()).isEmpty();
        assertThat(reading.mistakes()).extracting(AnswerMistake::code).containsOnly("required").hasSize(3);
    }

    @Test
    @DisplayName("not knowing one of them says nothing of the others: they are still to be answered")
    void notKnowingOneSaysNothingOfTheOthers() {
        FormReading reading = sent(Map.of("state", List.of("dont-know")));
        assertThat(reading.answers().byQuestion()).containsOnly(Map.entry("state", Answer.DONT_KNOW));
        assertThat(reading.mistakes()).extracting(AnswerMistake::code).containsOnly("required").hasSize(2);
    }

    @Test
    @DisplayName("not knowing the first of a group is said of the group, and of no other")
    void notKnowingIsSaidOfAGroup() {
        Map<String, List<String>> fields =
            Map.of("together", List.of("state baby", "worn"), "state", List.of("dont-know"), "worn", List.of("yes"));
        Answers said = new FormReader(LocalDate.of(2026, 6, 10))
            .read(LIST, TickList.apart(LIST, fields), Answers.NONE).answers();
        assertThat(said.to("baby")).contains(Answer.DONT_KNOW);
        assertThat(said.to("worn")).contains(Answer.Chosen.of("yes"));
    }

    @Test
    void noneOfTheseBesideWhatIsNotKnownSpeaksOfTheRest() {
        Answers said = sent(Map.of("state", List.of("dont-know"), "whole-list", List.of("none"))).answers();
        assertThat(said.to("state")).contains(Answer.DONT_KNOW);
        assertThat(said.to("worn")).contains(Answer.Chosen.of("no"));
    }

    @Test
    void aTickBesideWhatIsNotKnownSpeaksOfTheRestToo() {
        Answers said = sent(Map.of("state", List.of("dont-know"), "worn", List.of("yes"))).answers();
        assertThat(said.to("state")).contains(Answer.DONT_KNOW);
        assertThat(said.to("baby")).contains(Answer.Chosen.of("no"));
    }

    @Test
    void notKnowingIsSaidOfEachOfThem() {
        Answers said = sent(Map.of("whole-list", List.of("dont-know"))).answers();
        assertThat(said.byQuestion().values()).hasSize(3).containsOnly(Answer.DONT_KNOW);
    }

    @Test
    @DisplayName("not saying of a question that has no such answer is not knowing, never a no")
    void notSayingIsNeverANo() {
        Answers said = sent(Map.of("whole-list", List.of("rather-not-say"))).answers();
        assertThat(said.to("baby")).contains(Answer.RATHER_NOT_SAY);
        assertThat(said.to("state")).contains(Answer.DONT_KNOW);
        assertThat(said.to("worn")).contains(Answer.DONT_KNOW);
    }

    @Test
    void noneOfTheseBesideATickIsAMistake() {
        FormReading reading = sent(Map.of("state", List.of("sheds"), "whole-list", List.of("none")));
        assertThat(reading.mistakes()).extracting(AnswerMistake::code).contains("none-and-others");
    }

    @Test
    @DisplayName("of two rows of one question the first counts, which weighs more")
    void theHeavierRowCounts() {
        Answers said = sent(Map.of("worn", List.of("some-time-ago", "yes"))).answers();
        assertThat(said.to("worn")).contains(Answer.Chosen.of("yes"));
    }

    @Test
    @DisplayName("a question put by itself is left alone, whatever a list says")
    void onlyWhatStoodTogetherIsAnsweredTogether() {
        Map<String, List<String>> fields = Map.of("together", List.of("state"), "whole-list", List.of("none"));
        assertThat(TickList.apart(LIST, fields)).containsEntry("state", List.of("none")).doesNotContainKey("worn");
    }

    @Test
    void aStrangeCodeIsRefused() {
        assertThat(sent(Map.of("worn", List.of("yes", "perhaps"))).clean()).isFalse();
        assertThat(sent(Map.of("whole-list", List.of("perhaps"))).clean()).isFalse();
    }
}
