package foretress.intake;

import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.questionnaire.Walk;
import foretress.visit.Visit;
import java.time.LocalDate;
import java.util.List;

/** What is asked only in the last days before a visit, or at the chair: how the scalp is then. */
final class LastDays {
    /** Our own figure: near enough that it may still be so, far enough to be reached by the same link. */
    private static final int DAYS = 2;

    private LastDays() {}

    static LocalDate from(Visit visit) {
        return visit.startsThere().toLocalDate().minusDays(DAYS);
    }

    static boolean begun(Visit visit, LocalDate today) {
        return !today.isBefore(from(visit));
    }

    static List<Question> waiting(Walk walk) {
        return walk.topics().stream().flatMap(topic -> walk.open(topic).stream())
            .filter(q -> q.onlyNear() && walk.said().to(q.id()).isEmpty()).toList();
    }

    /**
     * Before the visit's day nobody has been asked in vain: what is not put yet counts as answered with no, so that what else was
     * found can be seen. On the day itself it is as unknown as anything not answered, and no decision is taken without it.
     */
    static Answers assumed(Visit visit, LocalDate today, List<Question> put, Answers said) {
        return today.isBefore(visit.startsThere().toLocalDate()) ? answeredNo(put, said) : said;
    }

    /** These answers, and no to what the last days ask and was not answered. */
    static Answers answeredNo(List<Question> put, Answers said) {
        Answers all = said;
        for (Question question : put) {
            if (question.onlyNear() && said.to(question.id()).isEmpty()) {
                all = all.with(question.id(), Answer.Chosen.of(no(question)));
            }
        }
        return all;
    }

    private static String no(Question question) {
        return question.options().stream().filter(Question.NOES::contains).findFirst()
            .orElseThrow(() -> new IllegalStateException(
                question.id() + " waits for the last days and cannot be answered with no"));
    }

    /** These answers without those of the last days. */
    static Answers without(List<Question> all, Answers said) {
        Answers rest = said;
        for (Question question : all) {
            rest = question.onlyNear() ? rest.without(question.id()) : rest;
        }
        return rest;
    }
}
