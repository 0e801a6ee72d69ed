package foretress.assessment;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * What a list of ingredients says, if the client gave one. Nobody has to: without one these facts are at their best, and
 * the doubt is left to the questions about cues.
 */
final class LabelFacts {
    private final Asking asking;
    private final Lexicon lexicon;

    LabelFacts(Asking asking, Lexicon lexicon) {
        this.asking = asking;
        this.lexicon = lexicon;
    }

    /** One of the lists that were given names dyes of this class, no others, no metal, and nothing that is not recognised. */
    boolean prove(String dyes) {
        return asking.ofKind(Kind.INGREDIENTS).stream().filter(question -> !asking.closed(question))
            .flatMap(question -> given(question).stream()).anyMatch(label -> proves(label, dyes));
    }

    private static boolean proves(Lexicon.Label label, String dyes) {
        boolean nothingElse = label.classes().stream().filter(c -> c.contains("dye")).allMatch(dyes::equals);
        return label.classes().contains(dyes) && nothingElse && metal(label.risks()) == 0
            && dye(label.risks(), label.classes()) < 2 && !label.unknownWords();
    }

    private Optional<Lexicon.Label> given(Question question) {
        return asking.answer(question).filter(Answer.Text.class::isInstance)
            .map(answer -> ((Answer.Text) answer).text())
            .filter(text -> !text.isBlank()).map(text -> lexicon.label(text));
    }

    FactValue metal(FactDef def) {
        return value(def, label -> metal(label.risks()), word -> metal(word.risks()));
    }

    private static int metal(Set<String> risks) {
        return risks.contains("metal-residue") ? 2 : risks.contains("metal-trace") ? 1 : 0;
    }

    FactValue dyeGroup(FactDef def) {
        return value(def, label -> dye(label.risks(), label.classes()), word -> dye(word.risks(), word.classes()));
    }

    private static int dye(Set<String> risks, Set<String> classes) {
        return risks.contains("ppd-group-allergen") ? 2 : classes.stream().anyMatch(c -> c.contains("dye")) ? 1 : 0;
    }

    FactValue notRecognised(FactDef def) {
        return value(def, label -> label.unknownWords() ? 1 : 0, word -> word.read().sure() ? 0 : 1);
    }

    /** @param ofWord what one word of the label means by itself: those that mean as much as the whole made it so */
    private FactValue value(FactDef def, ToIntFunction<Lexicon.Label> meaning, ToIntFunction<Lexicon.Word> ofWord) {
        FactValue value = FactValue.known(def, 0, List.of());
        for (Question question : asking.ofKind(Kind.INGREDIENTS)) {
            value = value.heavier(said(def, question, meaning, ofWord));
        }
        return value;
    }

    private FactValue said(FactDef def, Question question, ToIntFunction<Lexicon.Label> meaning,
        ToIntFunction<Lexicon.Word> ofWord) {
        Optional<Lexicon.Label> given = given(question);
        if (given.isPresent()) {
            int means = meaning.applyAsInt(given.get());
            return FactValue.known(def, means, List.of(question.id()))
                .reading(means == 0 ? List.of() : given.get().words().stream()
                    .filter(word -> ofWord.applyAsInt(word) == means).map(Lexicon.Word::read).distinct().toList());
        }
        Optional<Answer> answer = asking.answer(question);
        boolean mayBeLeftOut = !question.required() && answer.isEmpty();
        boolean empty = answer.isPresent() && answer.get() instanceof Answer.Text;
        return mayBeLeftOut || empty || asking.closed(question) ? FactValue.known(def, 0, List.of())
            : asking.silent(def, question);
    }
}
