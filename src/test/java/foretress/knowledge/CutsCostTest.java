package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Status;
import foretress.questionnaire.TickList;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * What it costs to ask less: over random clients, how many standings come out lighter when a truth is not told any more. Written to
 * {@code target/cuts.txt}; docs/why tells what was decided by it. {@code -Dcuts=2000} tries as many as stand there.
 */
@Execution(ExecutionMode.CONCURRENT)
class CutsCostTest {
    private static final int CLIENTS = Integer.getInteger("cuts", 40);
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    private static final Map<Question.Kind, Answer> LISTS =
        Map.of(Question.Kind.HAIR_LENGTH, new Answer.Length(BaseClient.LENGTH_CM, true),
            Question.Kind.TREATMENTS, new Answer.Treatments(List.of()), Question.Kind.MEDICINES,
            new Answer.Medicines(List.of()));

    /** Ticked in a list today, or weighed for one and left with a yes and a no of its own. */
    private static final List<String> WEIGHED = List.of("elsewhere-reaction", "work-exposure", "skin-today",
        "illness-lately", "skin-tested", "tint-reaction", "cancer-care");
    /** One yes or no in place of two: what was asked apart before is asked after a yes alone. */
    private static final Map<String, List<String>> GATES = Map.of("cancer-care",
        List.of("chemotherapy", "radiotherapy-head"), "skin-tested", List.of("skin-test-before", "clinic-patch-test"));

    /** Of so many clients to whom a question is put, for how many the standing is lighter after a cut. */
    private record Cost(int put, int lighter) {
        @Override
        public String toString() {
            return "%d of %d (%.1f %%)".formatted(lighter, put, put == 0 ? 0 : 100.0 * lighter / put);
        }
    }

    @Test
    @DisplayName("R52: what each cut of the questionnaire costs is counted, and what is grave is not among the cuts")
    void whatItCostsToAskLess() throws IOException {
        List<String> lines = new ArrayList<>(List.of("question | unsure of it alone, read as no | yes, overlooked"));
        for (String id : WEIGHED) {
            Question question = KNOWLEDGE.questionnaire().question(id).orElseThrow();
            lines.add("%s | %s | %s".formatted(id, unsure(question), overlooked(question)));
        }
        lines.add("hair-length, not drawn straight, taken as straight | %s |".formatted(curls()));
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target/cuts.txt"), lines);
        for (String grave : List.of("colour-reaction", "tint-reaction", "bleach-reaction", "perm-reaction",
            "black-tattoo", "skin-tested", "cancer-care")) {
            assertThat(inALongList(grave)).as("%s is ticked in a list", grave).isFalse();
        }
    }

    @Test
    @DisplayName("R52: one yes or no in place of two changes nobody's standing, whether the answer is no or not known")
    void oneGateForTwoChangesNothing() {
        GATES.forEach((gate, behind) -> IntStream.range(0, CLIENTS).forEach(number -> {
            WholeClient client = new RandomClients(number).almostWell();
            Answers rest = without(client.answers(), gate, behind);
            for (Answer said : List.of(Answer.Chosen.of("no"), Answer.DONT_KNOW)) {
                Answers apart = rest.with(gate, Answer.Chosen.of("yes"));
                for (String question : behind) {
                    apart = apart.with(question, said);
                }
                assertThat(standing(client, rest.with(gate, said))).as("%s %s: %s", gate, said, client)
                    .isEqualTo(standing(client, apart));
            }
        }));
    }

    @Test
    @DisplayName("R52: an answer given before there was a gate to it is never read as a no: a yes opens the gate, anything else is asked for once more")
    void anAnswerFromBeforeTheGateIsNoNo() {
        GATES.forEach((gate, behind) -> behind.forEach(id -> {
            Question question = KNOWLEDGE.questionnaire().question(id).orElseThrow();
            IntStream.range(0, CLIENTS).forEach(number -> {
                WholeClient client = new RandomClients(number).almostWell();
                Answers old = without(client.answers(), gate, behind)
                    .with(id, Answer.Chosen.of(question.options().get(number % question.options().size())));
                Weight closed = WholeClientsTest.standing(client, old.with(gate, Answer.Chosen.of("no")));
                assertThat(WholeClientsTest.standing(client, old).atLeast(closed)).as("%s", client).isTrue();
                Answers implied = KNOWLEDGE.questionnaire().implied(client.service().chemistries(), old);
                assertThat(WholeClientsTest.standing(client, implied).atLeast(closed)).as("%s", client).isTrue();
                boolean put = KNOWLEDGE.questionnaire().status(KNOWLEDGE.questionnaire().question(gate).orElseThrow(),
                    client.service().chemistries(), old) == Status.ASKED;
                boolean told = !old.to(id).orElseThrow().codes().equals(List.of("no"));
                assertThat(implied.to(gate)).isEqualTo(put && told ? Optional.of(Answer.Chosen.of("yes"))
                    : Optional.empty());
                assertThat(KNOWLEDGE.questionnaire().missing(client.service().chemistries(), implied)
                    .stream().anyMatch(open -> open.id().equals(gate))).isEqualTo(put && !told);
            });
        }));
    }

    private static Answers without(Answers answers, String gate, List<String> behind) {
        Answers rest = answers.without(gate);
        for (String question : behind) {
            rest = rest.without(question);
        }
        return rest;
    }

    private static boolean inALongList(String question) {
        return KNOWLEDGE.questionnaire().topics().stream().anyMatch(topic -> topic.list().contains(question));
    }

    private static Cost unsure(Question question) {
        return question.unsure() ? cost(question, client -> Answer.DONT_KNOW) : new Cost(0, 0);
    }

    private static Cost overlooked(Question question) {
        List<String> told = question.options().stream().filter(code -> !code.equals(TickList.no(question))).toList();
        return cost(question, client -> Answer.Chosen.of(client.pick(told)));
    }

    private interface Telling {
        Answer by(RandomClients client);
    }

    /** A client who has this to tell, and the same one where it is read as no. */
    private static Cost cost(Question question, Telling telling) {
        var put = new AtomicInteger();
        var lighter = new AtomicInteger();
        IntStream.range(0, CLIENTS).forEach(number -> {
            var invented = new RandomClients(number);
            WholeClient client = invented.almostWell();
            if (KNOWLEDGE.questionnaire().status(question, client.service().chemistries(),
                client.answers()) != Status.ASKED) {
                return;
            }
            put.incrementAndGet();
            Weight told = standing(client, client.answers().with(question.id(), telling.by(invented)));
            Weight cut =
                standing(client, client.answers().with(question.id(), Answer.Chosen.of(TickList.no(question))));
            lighter.addAndGet(told.atLeast(cut) && told != cut ? 1 : 0);
        });
        return new Cost(put.get(), lighter.get());
    }

    /** Hair with a history and a length that was not drawn straight, measured by nobody. */
    private static Cost curls() {
        var put = new AtomicInteger();
        var lighter = new AtomicInteger();
        IntStream.range(0, CLIENTS).forEach(number -> {
            WholeClient any = new RandomClients(number).client();
            any.answers().to("treatments").ifPresent(hair -> {
                put.incrementAndGet();
                var client = new WholeClient(any.service(), Answers.NONE.with("treatments", hair), List.of(), false,
                    Optional.of(RandomClients.TODAY.minusYears(40)));
                int cm = 2 + number % 60;
                Weight told = standing(client, client.answers().with("hair-length", new Answer.Length(cm, false)));
                Weight cut = standing(client, client.answers().with("hair-length", new Answer.Length(cm, true)));
                lighter.addAndGet(told.atLeast(cut) && told != cut ? 1 : 0);
            });
        });
        return new Cost(put.get(), lighter.get());
    }

    /** What is put and not told is answered with no; where there is no such answer it stays open, before the cut and after. */
    private static Weight standing(WholeClient client, Answers given) {
        Set<String> chemistries = client.service().chemistries();
        Answers answers = KNOWLEDGE.questionnaire().implied(chemistries,
            KNOWLEDGE.questionnaire().stillOpen(chemistries, given));
        for (Question question : KNOWLEDGE.questionnaire().questions()) {
            boolean put = answers.to(question.id()).isEmpty()
                && KNOWLEDGE.questionnaire().status(question, chemistries, answers) == Status.ASKED;
            answers = put && LISTS.containsKey(question.kind())
                ? answers.with(question.id(), LISTS.get(question.kind())) : answers;
            answers = put && question.options().contains(TickList.no(question))
                ? answers.with(question.id(), Answer.Chosen.of(TickList.no(question))) : answers;
        }
        return WholeClientsTest.standing(client, KNOWLEDGE.questionnaire().implied(chemistries, answers));
    }
}
