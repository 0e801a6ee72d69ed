package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Status;
import foretress.questionnaire.Questionnaire;
import foretress.questionnaire.Topic;
import foretress.questionnaire.Walk;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;

/** Random clients go through the shipped questionnaire page by page, as the client's pages lead them; some go back and say it differently. */
class EveryQuestionIsAskedTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Questionnaire QUESTIONS = KNOWLEDGE.questionnaire();
    private static final int MOST_PAGES = 300;

    @Property(tries = 2_000, seed = "20261129")
    @Label("R2: every question whose condition holds was on a page before reading back, and none whose condition does not hold")
    void everyOpenQuestionIsOnAPageAndNoOther(@ForAll int number) {
        var client = new RandomClients(number);
        var walk =
            new Walk(QUESTIONS, client.pick(KNOWLEDGE.ruleSet().services()).chemistries(), Answers.NONE, Set.of());
        Optional<Walk.Step> step = walk.next();
        for (int pages = 0; step.isPresent(); pages++) {
            assertThat(pages).as("pages without end").isLessThan(MOST_PAGES);
            onlyWhatIsOpen(walk, step.get());
            walk = sent(walk, step.get(), client);
            Topic back = client.pick(walk.topics());
            step = client.chance(12) ? Optional.of(walk.page(back, client.chance(2))) : walk.after(step.get().topic());
        }
        everyOpenOneWasPut(walk);
    }

    private static void onlyWhatIsOpen(Walk walk, Walk.Step step) {
        assertThat(step.questions()).as("a page asks something").isNotEmpty();
        for (Question question : step.questions()) {
            assertThat(QUESTIONS.status(question, walk.chemistries(), walk.said())).as(question.id())
                .isEqualTo(Status.ASKED);
            Set<String> said = walk.said().byQuestion().keySet();
            assertThat(said.containsAll(question.when().keySet())
                || question.orWhen().keySet().stream().anyMatch(said::contains)).as("what opens " + question.id())
                .isTrue();
        }
    }

    private static void everyOpenOneWasPut(Walk walk) {
        Answers implied = QUESTIONS.implied(walk.chemistries(), walk.said());
        List<Question> open = QUESTIONS.questions().stream()
            .filter(q -> QUESTIONS.status(q, walk.chemistries(), walk.said()) == Status.ASKED)
            // What follows from not knowing something else is not put: it reads as not known.
            .filter(q -> walk.said().to(q.id()).isPresent() || implied.to(q.id()).isEmpty()).toList();
        assertThat(walk.put()).containsAll(open.stream().map(Question::id).toList());
        assertThat(walk.said().byQuestion().keySet())
            .containsAll(open.stream().filter(Question::required).map(Question::id).toList());
    }

    /** The page as a client sends it: optional questions are left empty now and then. */
    private static Walk sent(Walk walk, Walk.Step step, RandomClients client) {
        Answers said = walk.said();
        Set<String> put = new HashSet<>(walk.put());
        for (Question question : step.questions()) {
            Answers without = said.without(question.id());
            said = answer(question, client).map(a -> without.with(question.id(), a)).orElse(without);
            put.add(question.id());
        }
        return new Walk(QUESTIONS, walk.chemistries(), QUESTIONS.stillOpen(walk.chemistries(), said), put);
    }

    private static Optional<Answer> answer(Question question, RandomClients client) {
        Optional<Answer> said = client.answer(question);
        return question.required() ? said.or(() -> Optional.of(Answer.DONT_KNOW)) : said.filter(a -> client.chance(2));
    }
}
