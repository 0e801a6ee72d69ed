package foretress.knowledge;

import foretress.assessment.FactDef;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Status;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The client every case starts from: grown up, 40 cm of hair, nothing ever done to it, no medicines, and "no" to every
 * question that is put. Where a choice offers none of {@code no, never, none}, the first option that gives the facts their
 * best class. A case says only what differs; questions which that opens are answered in the same way.
 */
final class BaseClient {
    static final int LENGTH_CM = 40;
    private static final List<String> NOES = List.of("no", "never", "none");

    private final Knowledge knowledge;

    BaseClient(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** These answers, and the base client's to everything else that is put; the named questions stay unanswered. */
    Answers complete(Answers given, Set<String> chemistries, Set<String> unanswered) {
        Answers answers = given;
        for (Question question : knowledge.questionnaire().questions()) {
            boolean put = knowledge.questionnaire().status(question, chemistries, answers) == Status.ASKED;
            if (put && answers.to(question.id()).isEmpty() && !unanswered.contains(question.id())) {
                Optional<Answer> no = answer(question);
                answers = no.isPresent() ? answers.with(question.id(), no.get()) : answers;
            }
        }
        return answers;
    }

    private Optional<Answer> answer(Question question) {
        return switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> Optional.of(Answer.Chosen.of(bestOption(question)));
            case HAIR_LENGTH -> Optional.of(new Answer.Length(LENGTH_CM, true));
            case TREATMENTS -> Optional.of(new Answer.Treatments(List.of()));
            case MEDICINES -> Optional.of(new Answer.Medicines(List.of()));
            case SAID_DATE, INGREDIENTS, NOTE -> Optional.empty();
        };
    }

    private String bestOption(Question question) {
        return question.options().stream().filter(NOES::contains).findFirst()
            .or(() -> question.options().stream().min(Comparator.comparingInt(code -> worst(question, code))))
            .orElseThrow();
    }

    /** The worst class any row can give for this code, the row's other questions left aside. */
    private int worst(Question question, String code) {
        return knowledge.ruleSet().facts().stream().flatMap(fact -> fact.rows().stream())
            .filter(row -> row.when().getOrDefault(question.id(), List.of()).contains(code))
            .mapToInt(FactDef.Row::ordinal).max().orElse(0);
    }
}
