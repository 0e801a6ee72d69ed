package foretress.questionnaire;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Everything a client has said so far, by question id. */
public record Answers(Map<String, Answer> byQuestion) {
    public static final Answers NONE = new Answers(Map.of());

    public Answers {
        byQuestion = Map.copyOf(byQuestion);
    }

    public Optional<Answer> to(String question) {
        return Optional.ofNullable(byQuestion.get(question));
    }

    public List<String> codes(String question) {
        return to(question).map(Answer::codes).orElse(List.of());
    }

    public Answers with(String question, Answer answer) {
        Map<String, Answer> more = new LinkedHashMap<>(byQuestion);
        more.put(question, answer);
        return new Answers(more);
    }

    public Answers without(String question) {
        Map<String, Answer> fewer = new LinkedHashMap<>(byQuestion);
        fewer.remove(question);
        return new Answers(fewer);
    }

    /** These answers, overridden by the others where both speak. */
    public Answers and(Answers others) {
        Map<String, Answer> all = new LinkedHashMap<>(byQuestion);
        all.putAll(others.byQuestion);
        return new Answers(all);
    }
}
