package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import foretress.assessment.FactDef;
import foretress.assessment.FactFinder;
import foretress.assessment.FactValue;
import foretress.assessment.KnownTreatments;
import foretress.assessment.Lexicon;
import foretress.assessment.RuleSet;
import foretress.assessment.Situation;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * From answers to classes: whatever a client could have said to a question, not knowing and not answering are never better.
 * Every combination of answers to the questions a fact reads is tried, those that open them included; where there are more
 * than {@value #MOST}, so many at random.
 */
@Execution(ExecutionMode.CONCURRENT)
class FactLawsTest {
    static final int MOST = 1_500;
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final Set<String> EVERYTHING = everything();

    private static Set<String> everything() {
        Set<String> all = new LinkedHashSet<>();
        KNOWLEDGE.ruleSet().steps().forEach(step -> all.addAll(step.uses()));
        return all;
    }

    @TestFactory
    Stream<DynamicTest> notSayingIsNeverBetterThanAnythingSaid() {
        return KNOWLEDGE.ruleSet().facts().stream().filter(def -> def.computation().isEmpty())
            .map(def -> dynamicTest(def.id(), () -> holds(def)));
    }

    private static void holds(FactDef def) {
        List<Question> questions = read(def);
        var finder = new FactFinder(only(def), Lexicon.KNOWS_NOTHING);
        for (int[] choice : choices(questions)) {
            Answers answers = answers(questions, choice);
            FactValue said = find(finder, def, answers);
            for (Question question : questions) {
                // A retired question left blank is not left unsaid: the list that took its place has been answered.
                if (!question.retired() || answers.to("treatments").isEmpty()) {
                    assertNotBetter(finder, def, answers.without(question.id()), said);
                }
                if (question.unsure()) {
                    assertNotBetter(finder, def, answers.with(question.id(), Answer.DONT_KNOW), said);
                }
            }
        }
    }

    private static void assertNotBetter(FactFinder finder, FactDef def, Answers unknown, FactValue said) {
        FactValue value = find(finder, def, unknown);
        assertThat(value.worst()).as("%s, but %s with %s", said, value, unknown).isGreaterThanOrEqualTo(said.worst());
    }

    private static FactValue find(FactFinder finder, FactDef def, Answers answers) {
        var situation = new Situation(DAY, Optional.empty(), EVERYTHING, KNOWLEDGE.questionnaire(), answers,
            KNOWLEDGE.policy("uk"), List.of());
        return finder.find(situation).get(def.id());
    }

    private static RuleSet only(FactDef def) {
        return new RuleSet(List.of(def), new KnownTreatments(KNOWLEDGE.ruleSet().treatments().kinds(), List.of()),
            List.of(), List.of(), List.of(), List.of(), Map.of(), "");
    }

    /** The questions a fact reads, and those that open them, the openers first. */
    private static List<Question> read(FactDef def) {
        Set<Question> read = new LinkedHashSet<>();
        def.rows().forEach(row -> row.when().keySet().forEach(id -> add(id, read)));
        return List.copyOf(read);
    }

    private static void add(String id, Set<Question> read) {
        Question question = KNOWLEDGE.questionnaire().question(id).orElseThrow();
        question.when().keySet().forEach(opener -> add(opener, read));
        read.add(question);
    }

    /** For each question a number: one of its options, or one more for no answer. */
    private static List<int[]> choices(List<Question> questions) {
        long all = questions.stream().mapToLong(q -> q.options().size() + 1).reduce(1, Math::multiplyExact);
        var random = new Random(all);
        List<int[]> choices = new ArrayList<>();
        for (int n = 0; n < Math.min(all, MOST); n++) {
            long number = all <= MOST ? n : random.nextLong(all);
            int[] choice = new int[questions.size()];
            for (int q = 0; q < choice.length; q++) {
                int digits = questions.get(q).options().size() + 1;
                choice[q] = (int) (number % digits);
                number /= digits;
            }
            choices.add(choice);
        }
        return choices;
    }

    private static Answers answers(List<Question> questions, int[] choice) {
        Answers answers = Answers.NONE;
        for (int q = 0; q < choice.length; q++) {
            List<String> options = questions.get(q).options();
            answers = choice[q] < options.size()
                ? answers.with(questions.get(q).id(), Answer.Chosen.of(options.get(choice[q]))) : answers;
        }
        return answers;
    }
}
