package foretress.knowledge;

import foretress.questionnaire.Question;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads and checks what looks at answers: {@code { question: [code, code], ... }}. */
final class Whens {
    private Whens() {}

    static Map<String, List<String>> read(Yaml when) {
        Map<String, List<String>> read = new LinkedHashMap<>();
        when.fields().forEach((question, codes) -> read.put(question, codes.texts()));
        return read;
    }

    /** Every question must exist and offer every code. */
    static void check(Yaml when, Map<String, Question> questions) {
        for (Map.Entry<Yaml, Yaml> entry : when.pairs()) {
            entry.getKey()
                .trying(key -> codes(questions.get(key.oneOf(questions.keySet(), "question")), entry.getValue()));
        }
        if (when.pairs().isEmpty()) {
            when.complain("name a question here");
        }
    }

    private static void codes(Question question, Yaml codes) {
        if (question.options().isEmpty()) {
            throw codes.refuse("'%s' has no codes to look for: it is no choice".formatted(question.id()));
        }
        List<String> offered = new ArrayList<>(question.options());
        offered.addAll(question.unsure() ? List.of(Question.DONT_KNOW) : List.of());
        offered.addAll(question.personal() ? List.of(Question.RATHER_NOT_SAY) : List.of());
        codes.list()
            .forEach(code -> code.trying(c -> c.oneOf(offered, "answer to '%s' called".formatted(question.id()))));
    }
}
