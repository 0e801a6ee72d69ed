package foretress.questionnaire;

import java.util.List;

/**
 * One page of questions.
 *
 * @param list ids of those that stand on the page as one list to tick, with one "none of these"; none where each stands alone
 */
public record Topic(String id, List<Question> questions, List<String> list) {
    public Topic {
        questions = List.copyOf(questions);
        list = List.copyOf(list);
    }

    /** Each question stands by itself. */
    public Topic(String id, List<Question> questions) {
        this(id, questions, List.of());
    }

    /** Those of these questions that stand together as one list. */
    public List<Question> together(List<Question> put) {
        return put.stream().filter(q -> list.contains(q.id())).toList();
    }
}
