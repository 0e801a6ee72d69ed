package foretress.consultation;

import foretress.consultation.VisitView.Ask;
import foretress.intake.Intake;
import foretress.intake.ShelfLife;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.visit.Visit;
import foretress.web.Language;
import foretress.web.StylistWords;
import jakarta.enterprise.context.RequestScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What nobody asked yet, or must ask once more on the day, and where it is asked. */
@RequestScoped
class StillToAsk {
    /** More than this many questions are named by their topics. */
    private static final int NAMED = 4;

    private final Intake intake;
    private final ShelfLife shelfLife;
    private final DueToday dueToday;
    private final Knowledge knowledge;
    private final Language language;
    private final StylistWords say;

    StillToAsk(Intake intake, ShelfLife shelfLife, DueToday dueToday, Knowledge knowledge, Language language,
        StylistWords say) {
        this.intake = intake;
        this.shelfLife = shelfLife;
        this.dueToday = dueToday;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
    }

    /** Before the day the client answers what is missing; on the day staff ask it, with what is good for that day only. */
    List<Ask> of(Visit visit, Answers said) {
        if (!visit.state.takesAnswers()) {
            return List.of();
        }
        LocalDate day = visit.startsThere().toLocalDate();
        return intake.today(visit).isBefore(day) ? before(visit, said, shelfLife.due(visit, said))
            : now(visit, dueToday.of(visit, said), intake.today(visit).isAfter(day));
    }

    private List<Ask> before(Visit visit, Answers said, List<Question> due) {
        List<Question> missing = intake.missing(visit, said);
        List<Ask> asks = new ArrayList<>();
        if (!missing.isEmpty()) {
            asks.add(new Ask(say.ask_missing(missing.size()), names(missing), "/desk/visits/" + visit.id,
                say.ask_to_link()));
        }
        int later = (int) due.stream().filter(q -> !missing.contains(q)).count();
        if (later > 0) {
            asks.add(new Ask("", say.ask_on_the_day(later), "", ""));
        }
        return asks;
    }

    private List<Ask> now(Visit visit, List<Question> due, boolean past) {
        return due.isEmpty() ? List.of()
            : List.of(past ? new Ask(say.ask_not_asked(due.size()), say.ask_day_passed(), "", "")
                : new Ask(say.ask_not_asked(due.size()), names(due), "/visits/" + visit.id + "/today", say.ask_now()));
    }

    private String names(List<Question> questions) {
        return questions.size() <= NAMED
            ? questions.stream().map(q -> words().question(q.id()).short_()).collect(Collectors.joining(", "))
            : knowledge.questionnaire().topics().stream()
                .filter(t -> t.questions().stream().anyMatch(questions::contains))
                .map(t -> words().topic(t.id())).collect(Collectors.joining(", "));
    }

    private Words words() {
        return knowledge.words(language.getTag());
    }
}
