package foretress.knowledge;

import foretress.questionnaire.Contradiction;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Questionnaire;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Reads which answers cannot both be right; every question and code must exist. */
final class ContradictionsReader {
    private final Map<String, Question> questions = new LinkedHashMap<>();
    private final Map<String, Contradiction> read = new LinkedHashMap<>();

    ContradictionsReader(Questionnaire questionnaire) {
        questionnaire.questions().forEach(q -> questions.put(q.id(), q));
    }

    void read(Yaml file) {
        file.list().forEach(entry -> entry.trying(this::one));
    }

    List<Contradiction> contradictions() {
        return List.copyOf(read.values());
    }

    private void one(Yaml entry) {
        entry.only("id", "one", "other");
        var contradiction =
            new Contradiction(IdSyntax.read(entry.at("id")), side(entry.at("one")), side(entry.at("other")));
        if (read.putIfAbsent(contradiction.id(), contradiction) != null) {
            entry.at("id").complain("two contradictions are called '%s'".formatted(contradiction.id()));
        }
        if (contradiction.one().question().equals(contradiction.other().question())) {
            entry.at("other").complain("one question cannot contradict itself");
        }
    }

    private Contradiction.Side side(Yaml side) {
        List<Map.Entry<Yaml, Yaml>> pairs = new ArrayList<>(side.pairs());
        if (pairs.size() != 1) {
            throw side.refuse("name one question here");
        }
        Question question = questions.get(pairs.get(0).getKey().oneOf(questions.keySet(), "question"));
        Set<String> codes = new TreeSet<>();
        pairs.get(0).getValue().list()
            .forEach(code -> codes.add(code.oneOf(codes(question), "answer to '%s' called".formatted(question.id()))));
        return new Contradiction.Side(question.id(), codes);
    }

    private static Set<String> codes(Question question) {
        Set<String> offered = new TreeSet<>(question.options());
        if (question.unsure() && question.kind() != Kind.TREATMENTS) {
            offered.add(Question.DONT_KNOW);
        }
        return offered;
    }
}
