package foretress.demo;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidDate;
import java.util.List;
import java.util.Optional;

/** What an invented client answers: what was invented for them, else no. */
final class Sayings {
    private static final List<String> NOES = List.of("no", "never", "none");
    private static final int USUAL_LENGTH_CM = 35;

    private Sayings() {}

    static Optional<Answer> answer(Question question, Invented client) {
        return client.answer(question.id()).or(() -> switch (question.kind()) {
            case ONE_OF, SEVERAL_OF -> Optional.of(Answer.Chosen.of(no(question)));
            case HAIR_LENGTH -> Optional.of(new Answer.Length(USUAL_LENGTH_CM, true));
            case TREATMENTS -> Optional.of(new Answer.Treatments(List.of()));
            case MEDICINES -> Optional.of(new Answer.Medicines(List.of()));
            case SAID_DATE -> Optional.of(new Answer.Said(new SaidDate.YearsAgo(1, 2)));
            case INGREDIENTS, NOTE -> Optional.empty();
        });
    }

    private static String no(Question question) {
        return question.options().stream().filter(NOES::contains).findFirst().orElse(question.options().get(0));
    }
}
