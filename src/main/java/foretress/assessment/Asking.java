package foretress.assessment;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one client's answers say to a look for codes, in three values. A question answered with a listed code holds; answered
 * otherwise, or closed by an earlier answer that is known, it does not. Not known, not answered, not put, or closed by an
 * answer that is itself not known: unknown.
 */
final class Asking {
    private final Situation situation;
    private final Map<String, Boolean> closed = new HashMap<>();
    private final Map<String, NotAsked> needs = new HashMap<>();
    private final Map<Kind, List<Question>> byKind;

    Asking(Situation situation) {
        this.situation = situation;
        this.byKind = situation.questionnaire().questions().stream().collect(Collectors.groupingBy(Question::kind));
    }

    /** Whether every question has one of its codes; questions not put because of the booking may be taken as answered well. */
    Truth holds(Map<String, List<String>> when, boolean notPutIsWell) {
        return holds(when, 1, notPutIsWell);
    }

    /** The same, with at least so many of each question's codes chosen. */
    Truth holds(Map<String, List<String>> when, int atLeast, boolean notPutIsWell) {
        Truth truth = Truth.TRUE;
        for (Map.Entry<String, List<String>> entry : when.entrySet()) {
            truth = truth.and(says(question(entry.getKey()), entry.getValue(), atLeast, notPutIsWell));
        }
        return truth;
    }

    private Truth says(Question question, List<String> codes, int atLeast, boolean notPutIsWell) {
        Truth opened = holds(question.when(), notPutIsWell);
        if (opened == Truth.FALSE) {
            return Truth.FALSE;
        }
        Optional<Answer> answer = answer(question);
        if (answer.isEmpty()) {
            return notPutIsWell && !put(question) ? Truth.FALSE : Truth.UNKNOWN;
        }
        return opened.and(matches(answer.get(), codes, atLeast));
    }

    private static Truth matches(Answer answer, List<String> codes, int atLeast) {
        long found = answer.codes().stream().filter(codes::contains).count();
        if (found >= Math.min(atLeast, answer.unknown() ? 1 : atLeast)) {
            return Truth.TRUE;
        }
        return answer.unknown() ? Truth.UNKNOWN : Truth.FALSE;
    }

    /** Closed by an earlier answer that is known: it reads as its best class. */
    boolean closed(Question question) {
        return closed.computeIfAbsent(question.id(), id -> holds(question.when(), false) == Truth.FALSE);
    }

    /** Neither answered nor closed. */
    boolean open(Question question) {
        return answer(question).isEmpty() && !closed(question);
    }

    /** Whether the booked service has the question put, its openers included. */
    boolean put(Question question) {
        return notAsked(question).putFor(situation.bookedChemistries());
    }

    NotAsked notAsked(Question question) {
        return needs.computeIfAbsent(question.id(), id -> new NotAsked(id, needs(question)));
    }

    /** Those of the questions that were not put and are still open. */
    List<NotAsked> notAsked(List<Question> questions) {
        return questions.stream().filter(q -> open(q) && !put(q)).map(this::notAsked).toList();
    }

    /** Those of the questions that were put, are required and have no answer. */
    List<String> unanswered(List<Question> questions) {
        return questions.stream().filter(q -> q.required() && open(q) && put(q)).map(Question::id).toList();
    }

    /** The whole range of a fact that hangs on a question nobody answered, or answered with not knowing. */
    FactValue silent(FactDef def, Question question) {
        boolean notPut = answer(question).isEmpty() && !put(question);
        return new FactValue(def.id(), def.classes(), 0, def.worst(), notPut ? 0 : def.worst(), List.of(question.id()),
            notAsked(List.of(question)), unanswered(List.of(question)), Optional.empty());
    }

    Policy policy() {
        return situation.policy();
    }

    Optional<Answer> answer(Question question) {
        return situation.answers().to(question.id());
    }

    Question question(String id) {
        return situation.questionnaire().question(id)
            .orElseThrow(() -> new IllegalArgumentException("no question is called " + id));
    }

    List<Question> ofKind(Kind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    private List<Set<String>> needs(Question question) {
        List<Set<String>> needs = new ArrayList<>();
        if (!question.askedFor().isEmpty()) {
            needs.add(question.askedFor());
        }
        question.when().keySet().forEach(opener -> needs.addAll(needs(question(opener))));
        return needs;
    }
}
