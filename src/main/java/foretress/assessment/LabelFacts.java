package foretress.assessment;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * What a list of ingredients says, if the client gave one. Nobody has to: without one these facts are at their best, and
 * the doubt is left to the questions about cues.
 */
final class LabelFacts {
    private final Asking asking;
    private final Lexicon lexicon;
    private final Map<String, Lexicon.Label> labels = new HashMap<>();

    LabelFacts(Asking asking, Lexicon lexicon) {
        this.asking = asking;
        this.lexicon = lexicon;
    }

    FactValue metal(FactDef def) {
        return value(def, label -> label.risks().contains("metal-residue") ? 2 : label.risks().contains("metal-trace") ? 1 : 0);
    }

    FactValue dyeGroup(FactDef def) {
        return value(def, label -> label.risks().contains("ppd-group-allergen") ? 2
            : label.classes().stream().anyMatch(c -> c.contains("dye")) ? 1 : 0);
    }

    FactValue notRecognised(FactDef def) {
        return value(def, label -> label.unknownWords() ? 1 : 0);
    }

    private FactValue value(FactDef def, ToIntFunction<Lexicon.Label> meaning) {
        FactValue value = FactValue.known(def, 0, List.of());
        for (Question question : asking.ofKind(Kind.INGREDIENTS)) {
            value = value.heavier(said(def, question, meaning));
        }
        return value;
    }

    private FactValue said(FactDef def, Question question, ToIntFunction<Lexicon.Label> meaning) {
        Optional<Answer> answer = asking.answer(question);
        List<String> cause = List.of(question.id());
        if (answer.isPresent() && answer.get() instanceof Answer.Text text && !text.text().isBlank()) {
            return FactValue.known(def, meaning.applyAsInt(labels.computeIfAbsent(text.text(), lexicon::label)), cause);
        }
        boolean mayBeLeftOut = !question.required() && answer.isEmpty();
        boolean empty = answer.isPresent() && answer.get() instanceof Answer.Text;
        return mayBeLeftOut || empty || asking.closed(question) ? FactValue.known(def, 0, List.of()) : asking.silent(def, question);
    }
}
