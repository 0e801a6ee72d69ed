package foretress.questionnaire;

import java.util.List;

/** One page of questions. */
public record Topic(String id, List<Question> questions) {
    public Topic {
        questions = List.copyOf(questions);
    }
}
