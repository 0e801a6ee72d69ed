package foretress.intake;

import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Status;
import foretress.questionnaire.Topic;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * What a client said before an earlier visit, to be confirmed or told anew. Nothing of it counts until the client has said that it
 * is still so; then it is an answer of this day. What was not known then, what has passed its time, and what is asked only near a
 * visit is asked again.
 */
@ApplicationScoped
class LastTime {
    /** What keeps for a day can be confirmed as unchanged for as long as one remembers what one said; our own figure. */
    private static final int REMEMBERED_MONTHS = 3;

    private final Knowledge knowledge;
    private final BookedChemistry chemistry;
    private final Intake intake;
    private final Visits visits;

    LastTime(Knowledge knowledge, BookedChemistry chemistry, Intake intake, Visits visits) {
        this.knowledge = knowledge;
        this.chemistry = chemistry;
        this.intake = intake;
        this.visits = visits;
    }

    /** @param said what can be confirmed for this visit */
    record Before(Visit visit, Instant at, Answers said) {}

    /** The newest visit of this client that was answered for, as long as nothing is answered for this one. */
    Optional<Before> of(Visit visit) {
        if (!KeptTopic.sent(visit.id).isEmpty() || !visit.state.takesAnswers()) {
            return Optional.empty();
        }
        return visits.of(visit.client.id).stream()
            .filter(v -> v.startsAt.isBefore(visit.startsAt))
            .filter(v -> !KeptTopic.sent(v.id).isEmpty()).max(Comparator.comparing(v -> v.startsAt))
            .filter(v -> v.state != State.WITHDRAWN) // older answers than those taken back are out of date, and all is asked anew
            .map(v -> before(visit, v)).filter(before -> !before.said().byQuestion().isEmpty());
    }

    private Before before(Visit visit, Visit earlier) {
        Answers then = intake.said(earlier);
        Map<String, Instant> asked = intake.askedAt(earlier);
        Set<String> booked = chemistry.of(visit);
        Answers still = Answers.NONE;
        for (Question question : knowledge.questionnaire().questions()) {
            Optional<Answer> answer = then.to(question.id()).filter(a -> isGood(visit, question, a, asked));
            if (answer.isPresent() && knowledge.questionnaire().status(question, booked, still) == Status.ASKED) {
                still = still.with(question.id(), answer.get());
            }
        }
        return new Before(earlier, asked.values().stream().max(Comparator.naturalOrder()).orElseThrow(), still);
    }

    private static boolean isGood(Visit visit, Question question, Answer answer, Map<String, Instant> asked) {
        return !answer.unknown() && question.kind() != Question.Kind.NOTE && !question.onlyNear()
            && Optional.ofNullable(asked.get(question.id())).map(at -> at.atZone(visit.zone()).toLocalDate())
                .filter(said -> isGood(question.keeps(), said, visit.startsThere().toLocalDate())).isPresent();
    }

    private static boolean isGood(Question.Keeps keeps, LocalDate said, LocalDate visit) {
        return keeps == Question.Keeps.THE_DAY ? !said.plusMonths(REMEMBERED_MONTHS).isBefore(visit)
            : ShelfLife.isGood(keeps, said, visit);
    }

    /** The topics of which something can be confirmed, in order. */
    List<Topic> topics(Answers said) {
        return knowledge.questionnaire().topics().stream()
            .filter(t -> t.questions().stream().anyMatch(q -> said.to(q.id()).isPresent())).toList();
    }

    /**
     * The client says that all of it is as it was but what stands in the topics named: those are asked anew.
     *
     * @return whether there was something to confirm
     */
    @Transactional
    boolean confirm(UUID visitId, Set<String> otherwise, String language) {
        Visit visit = Visit.findById(visitId);
        Optional<Before> before = of(visit);
        before.ifPresent(then -> topics(then.said()).stream().filter(topic -> !otherwise.contains(topic.id()))
            .forEach(topic -> intake.confirm(visitId, topic, put(topic, then.said()), then.said(), language)));
        return before.isPresent();
    }

    /** What counts as put: what was confirmed, and words one may leave out. */
    private static List<Question> put(Topic topic, Answers said) {
        return topic.questions().stream().filter(q -> said.to(q.id()).isPresent() || !q.required()).toList();
    }
}
