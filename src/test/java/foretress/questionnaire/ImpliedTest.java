package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What follows from not knowing: nobody is asked how soon something began of which they do not know whether it happened. */
class ImpliedTest {
    private static final Question COLOUR = asked("colour", Kind.ONE_OF, Map.of(), Map.of(), Optional.empty());
    private static final Question PERM = asked("perm", Kind.ONE_OF, Map.of(), Map.of(), Optional.empty());
    private static final Question UNSURE = asked("unsure", Kind.SEVERAL_OF, Map.of("colour", List.of("dont-know")),
        Map.of("perm", List.of("dont-know")), Optional.empty());
    private static final Question WHAT = followUp("what", Kind.SEVERAL_OF, "colour", "unsure");
    private static final Question SOON = followUp("soon", Kind.ONE_OF, "colour", Question.NOT_KNOWN);
    private static final Questionnaire ALL = new Questionnaire(List.of(new Topic("gates", List.of(COLOUR, PERM)),
        new Topic("unsure", List.of(UNSURE)), new Topic("more", List.of(WHAT, SOON))));

    private static Question asked(String id, Kind kind, Map<String, List<String>> when,
        Map<String, List<String>> orWhen, Optional<String> ifUnsure) {
        return new Question(id, kind, List.of("yes", "blisters", "no"), true, false, Set.of(), when, true,
            Keeps.THE_DAY,
            false, new Question.Put(orWhen, List.of(), ifUnsure, false));
    }

    private static Question followUp(String id, Kind kind, String opener, String ifUnsure) {
        return asked(id, kind, Map.of(opener, List.of("yes", "dont-know")), Map.of(), Optional.of(ifUnsure));
    }

    private static Answers of(Answers told) {
        return ALL.implied(Set.of(), told);
    }

    private static List<String> put(Answers told) {
        Answers said = of(told);
        return new Walk(ALL, Set.of(), said, Set.of()).waiting().stream().map(Question::id).toList();
    }

    private static Answers gates(Answer colour, Answer perm) {
        return Answers.NONE.with("colour", colour).with("perm", perm);
    }

    @Test
    @DisplayName("where the opener is not known, what hangs on it is not known either: never a no, and never left open")
    void notKnowingIsPassedOn() {
        Answers said = of(gates(Answer.DONT_KNOW, Chosen.of("no")));
        assertThat(said.to("soon")).contains(Answer.DONT_KNOW);
        assertThat(said.to("what")).contains(Answer.DONT_KNOW);
    }

    @Test
    @DisplayName("one question stands for all that is not known, and what is told there is an answer to each of them")
    void oneQuestionStandsForAll() {
        Answers told = gates(Answer.DONT_KNOW, Answer.DONT_KNOW);
        assertThat(put(told)).containsExactly("unsure");
        Answers said = of(told.with("unsure", Chosen.of("blisters")));
        assertThat(said.to("what")).contains(Chosen.of("blisters"));
        assertThat(said.to("soon")).contains(Answer.DONT_KNOW);
    }

    @Test
    void anyOfTheOpenersOpensTheOneQuestion() {
        assertThat(put(gates(Chosen.of("no"), Answer.DONT_KNOW))).containsExactly("unsure");
        assertThat(put(gates(Chosen.of("no"), Chosen.of("no")))).isEmpty();
        assertThat(put(Answers.NONE.with("perm", Chosen.of("no")))).containsExactly("colour");
    }

    @Test
    void whoSaysYesIsAskedAllOfIt() {
        assertThat(put(gates(Chosen.of("yes"), Chosen.of("no")))).containsExactly("what", "soon");
        assertThat(of(gates(Chosen.of("yes"), Chosen.of("no"))).to("what")).isEmpty();
    }

    @Test
    @DisplayName("what was told stands, whatever follows from not knowing")
    void whatWasToldStands() {
        Answers told = gates(Answer.DONT_KNOW, Chosen.of("no")).with("what", Chosen.of("yes"));
        assertThat(of(told).to("what")).contains(Chosen.of("yes"));
    }
}
