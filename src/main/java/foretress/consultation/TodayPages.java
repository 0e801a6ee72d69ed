package foretress.consultation;

import foretress.consent.Consents;
import foretress.decision.CurrentAssessment;
import foretress.decision.DecisionText;
import foretress.decision.DecisionWords;
import foretress.decision.Signature;
import foretress.intake.Intake;
import foretress.intake.Intake.Kept;
import foretress.intake.NoticeConsent;
import foretress.intake.QuestionView;
import foretress.intake.Views;
import foretress.ledger.Ledger;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormReading;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Topic;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistake;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** Asked again on the day: the stylist walks through what has a shelf life; the earlier answer is shown, none is chosen. */
@Path("/visits/{id}/today")
public class TodayPages {
    private static final Set<Kind> CHOICES = Set.of(Kind.ONE_OF, Kind.SEVERAL_OF);

    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TodayPage(DecisionText.Head head, String topic, String title, int left, List<Put> put,
        List<Mistake> mistakes, String submission,
        int version, String doneName) implements TemplateInstance {}

    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TodayDone(DecisionText.Head head, String words, boolean asked, List<DecisionText.Changed> changes,
        List<DecisionText.Said> answers)
        implements TemplateInstance {}

    /** A question with what was said before; {@code maySame} where that can be kept with one tap. */
    public record Put(QuestionView asked, String before, boolean maySame, boolean same) {}

    private final Visits visits;
    private final Intake intake;
    private final DueToday dueToday;
    private final NoticeConsent notices;
    private final Views views;
    private final CurrentAssessment assessed;
    private final Signature signature;
    private final Consents consents;
    private final DecisionText text;
    private final DecisionWords say;
    private final Ledger ledger;
    private final Who who;

    TodayPages(Visits visits, Intake intake, DueToday dueToday, NoticeConsent notices, Views views,
        CurrentAssessment assessed, Signature signature,
        Consents consents, DecisionText text, DecisionWords say, Ledger ledger, Who who) {
        this.visits = visits;
        this.intake = intake;
        this.dueToday = dueToday;
        this.notices = notices;
        this.views = views;
        this.assessed = assessed;
        this.signature = signature;
        this.consents = consents;
        this.text = text;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Transactional
    public TemplateInstance show(@RestPath UUID id) {
        Visit visit = found(id);
        ledger.read(who.staff().id.toString(), "consultation read", id.toString());
        Answers said = intake.said(visit);
        Optional<String> closed = closed(visit);
        if (closed.isPresent()) {
            return new TodayDone(text.head(visit), closed.get(), false, List.of(), List.of());
        }
        List<Question> due = dueToday.of(visit, said);
        return due.isEmpty() ? done(visit)
            : page(visit, said, due, Optional.empty(), List.of(), Optional.empty(), UUID.randomUUID().toString());
    }

    @POST
    public Response keep(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = found(id);
        Topic topic = views.topic(form.one("topic")).orElseThrow(NotFoundException::new);
        if (closed(visit).isPresent()) {
            return Response.seeOther(here(id)).build();
        }
        Answers said = intake.said(visit);
        List<Question> due = dueToday.of(visit, said);
        List<String> same = form.all("same");
        Intake.Page page = Intake.Page.of(posted, form.one("submission"), form.one("version"), visit.client.language);
        Kept kept = intake.askAgain(id, topic, page, in(topic, due), same, who.staff().id);
        if (kept.outcome() == Kept.Outcome.CLEAN) {
            ledger.note(who.staff().id.toString(), "asked again on the day", id.toString());
        }
        return switch (kept.outcome()) {
            case CLEAN, AGAIN -> Response.seeOther(here(id)).build();
            case MISTAKEN, OVERTAKEN -> FormAgain.with(page(visit, said, due, kept.reading(), same,
                kept.outcome() == Kept.Outcome.OVERTAKEN ? Optional.of(views.overtaken()) : Optional.empty(),
                form.one("submission")));
        };
    }

    /** Why nothing can be asked now, in words. */
    private Optional<String> closed(Visit visit) {
        LocalDate day = visit.startsThere().toLocalDate();
        LocalDate today = intake.today(visit);
        if (!notices.given(visit.id)) {
            return Optional.of(say.today_not_begun());
        }
        if (!visit.state.takesAnswers()) {
            return Optional.of(visit.state.isAhead() ? say.today_over() : say.visit_over());
        }
        return today.isBefore(day) ? Optional.of(say.today_later(text.day(day)))
            : today.isAfter(day) && !dueToday.of(visit, intake.said(visit)).isEmpty()
                ? Optional.of(say.today_earlier(text.day(day))) : Optional.empty();
    }

    private TemplateInstance done(Visit visit) {
        CurrentAssessment.Now now = assessed.now(visit);
        List<DecisionText.Changed> changes = signature.since(visit, now).map(text::changes).orElse(List.of());
        List<DecisionText.Said> answers = consents.latest(visit.id)
            .map(c -> text.answers(intake.saidBy(visit, c.signedAt()), now.said())).orElse(List.of());
        return new TodayDone(text.head(visit), say.today_done_text(), true, changes, answers);
    }

    /** The first topic with something due. */
    private TemplateInstance page(Visit visit, Answers said, List<Question> due, Optional<FormReading> reading,
        List<String> same, Optional<Mistake> extra,
        String submission) {
        Topic topic = intake.topics(visit, said).stream().filter(t -> !in(t, due).isEmpty()).findFirst().orElseThrow();
        List<QuestionView> asked =
            views.asked(in(topic, due), shown(topic, said), reading).stream().map(QuestionView::underAHeading).toList();
        List<Put> put = asked.stream().map(a -> put(a, said, same)).toList();
        return new TodayPage(text.head(visit), topic.id(), views.title(topic), due.size(), put,
            views.mistakes(asked, extra), submission, intake.version(visit, topic), QuestionView.listed(asked));
    }

    private Put put(QuestionView asked, Answers said, List<String> same) {
        boolean known = said.to(asked.id()).isPresent();
        boolean maySame = known && !CHOICES.contains(asked.question().kind()) && asked.entries().isEmpty();
        return new Put(asked, known ? text.answer(asked.question(), said) : "", maySame, same.contains(asked.id()));
    }

    /** Nothing is chosen beforehand; only a list that has entries shows them, to be kept or taken off one by one. */
    private static Answers shown(Topic topic, Answers said) {
        Map<String, Answer> lists = said.byQuestion().entrySet().stream()
            .filter(e -> topic.questions().stream().anyMatch(q -> q.id().equals(e.getKey())))
            .filter(e -> e.getValue() instanceof Answer.Treatments t && !t.list().isEmpty()
                || e.getValue() instanceof Answer.Medicines m && !m.list().isEmpty())
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new Answers(lists);
    }

    private static List<Question> in(Topic topic, List<Question> due) {
        List<Question> own = new ArrayList<>(topic.questions());
        own.retainAll(due);
        return own;
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    private static URI here(UUID id) {
        return URI.create("/visits/" + id + "/today");
    }
}
