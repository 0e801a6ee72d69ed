package foretress.intake;

import foretress.intake.Intake.Kept;
import foretress.intake.Intake.Page;
import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.Reading;
import foretress.questionnaire.Topic;
import foretress.visit.Visit;
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
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The client's pages: show one topic, keep what was said, go on to the next. */
@Path("/answers/{topic}")
public class TopicPages {
    /** The hidden fields every topic page carries. */
    private static final String SUBMISSION = "submission";
    private static final String VERSION = "version";
    private static final Set<Kind> LISTS = Set.of(Kind.TREATMENTS, Kind.MEDICINES);

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TopicPage(Progress progress, String where, String topic, String title, List<Asked> asked, List<Mistake> mistakes,
                     String submission, int version, String back, boolean list, String doneName) implements TemplateInstance {}

    private final Guest guest;
    private final Intake intake;
    private final Way way;
    private final Views views;
    private final Shown shown;

    TopicPages(Guest guest, Intake intake, Way way, Views views, Shown shown) {
        this.guest = guest;
        this.intake = intake;
        this.way = way;
        this.views = views;
        this.shown = shown;
    }

    @GET
    @Transactional
    public Response show(@RestPath String topic) {
        Visit visit = guest.visit();
        Topic known = views.topic(topic).orElseThrow(NotFoundException::new);
        if (!HealthConsent.given(visit.id)) {
            return Response.seeOther(Way.NOTICE).build();
        }
        Answers said = intake.said(visit);
        if (!intake.topics(visit, said).contains(known)) {
            return Response.seeOther(Way.START).build();
        }
        shown.page(visit.id, topic);
        return Response.ok(page(visit, known, said, Optional.empty(), Optional.empty(), UUID.randomUUID().toString())).build();
    }

    @POST
    public Response keep(@RestPath String topic, MultivaluedMap<String, String> form) {
        Visit visit = guest.visit();
        Topic known = views.topic(topic).orElseThrow(NotFoundException::new);
        if (!HealthConsent.given(visit.id)) {
            return Response.seeOther(Way.NOTICE).build();
        }
        Page posted = page(form);
        Kept kept = intake.keep(visit.id, known, posted);
        return switch (kept.outcome()) {
            case CLEAN, AGAIN -> Response.seeOther(way.after(visit.id, known, form)).build();
            case MISTAKEN, OVERTAKEN -> Response.status(422)
                .entity(page(visit, known, intake.said(visit), kept.reading(), overtaken(kept), posted.submission())).build();
        };
    }

    private Optional<Mistake> overtaken(Kept kept) {
        return kept.outcome() == Kept.Outcome.OVERTAKEN ? Optional.of(views.overtaken()) : Optional.empty();
    }

    private Page page(MultivaluedMap<String, String> form) {
        return new Page(form, one(form, SUBMISSION), version(one(form, VERSION)), guest.language());
    }

    private TopicPage page(Visit visit, Topic topic, Answers said, Optional<Reading> reading,
                           Optional<Mistake> extra, String submission) {
        List<Asked> asked = views.asked(intake.put(visit, topic, said), said, reading);
        Progress progress = way.progress(visit, said, topic.id());
        return new TopicPage(progress, views.where(progress, topic, asked.size() > 1), topic.id(), views.title(topic), asked,
            views.mistakes(asked, extra), submission, intake.version(visit, topic), way.before(visit, said, topic.id()).map(URI::toString).orElse(""), !listed(asked).isEmpty(),
            listed(asked));
    }

    /** Where a page grows a list: the name its main button bears, which says that the list is whole; else empty. */
    private static String listed(List<Asked> asked) {
        return asked.stream().filter(a -> LISTS.contains(a.question().kind())).map(a -> a.name("act")).findFirst().orElse("");
    }

    private static String one(MultivaluedMap<String, String> form, String name) {
        String value = form.getFirst(name);
        return value == null || value.length() > 64 ? UUID.randomUUID().toString() : value;
    }

    private static int version(String text) {
        return text.matches("\\d{1,6}") ? Integer.parseInt(text) : -1;
    }
}
