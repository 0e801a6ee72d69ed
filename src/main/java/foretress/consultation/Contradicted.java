package foretress.consultation;

import foretress.consultation.VisitView.Pair;
import foretress.intake.Intake;
import foretress.knowledge.AnswerWords;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Contradiction;
import foretress.questionnaire.Question;
import foretress.questionnaire.SaidTreatment;
import foretress.visit.Visit;
import foretress.web.Language;
import jakarta.enterprise.context.RequestScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Answers that cannot both be right, side by side. Nobody but the client can say which is; both stand until then. */
@RequestScoped
class Contradicted {
    private final Intake intake;
    private final Knowledge knowledge;
    private final Language language;

    Contradicted(Intake intake, Knowledge knowledge, Language language) {
        this.intake = intake;
        this.knowledge = knowledge;
        this.language = language;
    }

    List<Pair> of(Answers said) {
        return holding(said).stream().map(c -> new Pair(side(c.one(), said), side(c.other(), said))).toList();
    }

    /** What to ask to clear them up: either question of a pair that was not put on the day of the visit yet. */
    List<Question> toClear(Visit visit, Answers said) {
        Map<String, Instant> asked = intake.askedAt(visit);
        return holding(said).stream().flatMap(c -> c.questions().stream()).distinct()
            .filter(q -> !onTheDay(visit, Optional.ofNullable(asked.get(q))))
            .flatMap(q -> knowledge.questionnaire().question(q).stream()).toList();
    }

    private List<Contradiction> holding(Answers said) {
        return knowledge.contradictions().stream().filter(c -> c.holds(said)).toList();
    }

    private static boolean onTheDay(Visit visit, Optional<Instant> asked) {
        LocalDate day = visit.startsThere().toLocalDate();
        return asked.filter(at -> !at.atZone(visit.zone()).toLocalDate().isBefore(day)).isPresent();
    }

    /** Of a list the treatments that are meant, of any other answer all of it. */
    private String side(Contradiction.Side side, Answers said) {
        List<SaidTreatment> treatments = side.treatments(said);
        String answer = treatments.isEmpty() ? said.to(side.question()).map(a -> whole(side.question(), a)).orElse("")
            : knowledge.questionnaire().question(side.question()).map(q -> listed(q, treatments)).orElse("");
        return words().question(side.question()).short_() + ": " + answer;
    }

    private String listed(Question question, List<SaidTreatment> treatments) {
        return treatments.stream().map(t -> AnswerWords.say(question, t, words())).collect(Collectors.joining("; "));
    }

    private String whole(String question, Answer answer) {
        return knowledge.questionnaire().question(question).map(q -> AnswerWords.say(q, answer, words())).orElse("");
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
