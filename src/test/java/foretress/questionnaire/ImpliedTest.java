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
            false, new Question.Put(orWhen, List.of(), ifUnsure, Map.of(), false));
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

    private static final Question GATE = new Question("gate", Kind.ONE_OF, List.of("yes", "no"), true, false, Set.of(),
        Map.of(), true, Keeps.THE_DAY, false,
        new Question.Put(Map.of(), List.of(), Optional.empty(), Map.of("when", List.of("now", "longer")), false));
    private static final Question WHEN = behind("when"), ALSO = behind("also");
    private static final Questionnaire GATED =
        new Questionnaire(List.of(new Topic("all", List.of(GATE, WHEN, ALSO))));

    private static Question behind(String id) {
        return new Question(id, Kind.ONE_OF, List.of("now", "longer", "no"), true, false, Set.of(),
            Map.of("gate", List.of("yes", "dont-know")), true, Keeps.THE_DAY, false, new Question.Put(Map.of(),
                List.of(), Optional.of(Question.NOT_KNOWN), Map.of(), false));
    }

    private static Answers behindTheGate(Answers told) {
        return GATED.implied(Set.of(), told);
    }

    @Test
    @DisplayName("what was told before there was a gate to it opens the gate, and what else lies behind it is asked")
    void whatWasToldBeforeTheGateOpensIt() {
        Answers said = behindTheGate(Answers.NONE.with("when", Chosen.of("longer")));
        assertThat(said.to("gate")).contains(Chosen.of("yes"));
        assertThat(said.to("when")).contains(Chosen.of("longer"));
        assertThat(GATED.missing(Set.of(), said)).containsExactly(ALSO);
    }

    @Test
    @DisplayName("a no, or not knowing, behind a gate says nothing of it: it is never shut unasked")
    void noOpensNothingAndShutsNothing() {
        for (Answer told : List.of(Chosen.of("no"), Answer.DONT_KNOW)) {
            Answers said = behindTheGate(Answers.NONE.with("when", told).with("also", Chosen.of("now")));
            assertThat(said.to("gate")).as("%s", told).isEmpty();
            assertThat(GATED.missing(Set.of(), said)).as("it is asked").containsExactly(GATE);
        }
    }

    @Test
    @DisplayName("what was said at the gate itself stands, whatever was told behind it before")
    void whatWasSaidAtTheGateStands() {
        for (Answer said : List.of(Chosen.of("no"), Answer.DONT_KNOW)) {
            assertThat(behindTheGate(Answers.NONE.with("when", Chosen.of("now")).with("gate", said)).to("gate"))
                .contains(said);
        }
    }
}
