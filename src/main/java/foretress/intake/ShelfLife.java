package foretress.intake;

import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which answers are no longer good on the day of the visit and are asked again: scalp, skin, medicines and the like on that very day. */
@Singleton
public class ShelfLife {
    private final Intake intake;
    private final TakenBackElsewhere elsewhere;

    ShelfLife(Intake intake, TakenBackElsewhere elsewhere) {
        this.intake = intake;
        this.elsewhere = elsewhere;
    }

    /** The questions to ask again, in the order of the questionnaire; those put and never answered among them, and those
     * about which something was taken back with another visit. */
    public List<Question> due(Visit visit, Answers said) {
        Map<String, Instant> asked = intake.askedAt(visit);
        return intake.topics(visit, said).stream().flatMap(t -> intake.put(visit, t, said).stream())
            .filter(q -> due(q, visit, said, Optional.ofNullable(asked.get(q.id()))
                .filter(at -> !elsewhere.isOvertaken(visit, q.id(), at))))
            .toList();
    }

    private static boolean due(Question question, Visit visit, Answers said, Optional<Instant> asked) {
        boolean open = question.required() && said.to(question.id()).isEmpty();
        LocalDate visitDay = visit.startsThere().toLocalDate();
        return open
            || asked.map(at -> !isGood(question.keeps(), at.atZone(visit.zone()).toLocalDate(), visitDay)).orElse(true);
    }

    /** Whether an answer of this day is still good on that one; both in the salon's zone. */
    static boolean isGood(Question.Keeps keeps, LocalDate answered, LocalDate visit) {
        return switch (keeps) {
            case THE_DAY, THE_DAY_ONLY -> !answered.isBefore(visit);
            case THREE_MONTHS -> !answered.plusMonths(3).isBefore(visit);
            case SIX_MONTHS -> !answered.plusMonths(6).isBefore(visit);
            case TWELVE_MONTHS -> !answered.plusMonths(12).isBefore(visit);
            case FOR_GOOD -> true;
        };
    }
}
