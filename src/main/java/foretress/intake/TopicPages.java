package foretress.intake;

import foretress.intake.Intake.Kept;
import foretress.intake.Intake.Page;
import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.questionnaire.FormReading;
import foretress.questionnaire.Question;
import foretress.questionnaire.Topic;
import foretress.questionnaire.Walk;
import foretress.visit.Visit;
import foretress.web.FormAgain;
import foretress.web.Mistake;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The client's pages: show one topic, keep what was said, go on to the next. */
@Path("/answers/{topic}")
public class TopicPages {
    /** The hidden fields every topic page carries. */
    private static final String SUBMISSION = "submission";
    private static final String VERSION = "version";

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TopicPage(Progress progress, String topic, String title, String lead, String because,
        List<Block> blocks, List<Mistake> mistakes,
        Sent sent, String back, boolean list, String doneName) implements TemplateInstance {
        /** What the page's form carries unseen; {@code asked} names the questions on it. */
        record Sent(String to, String submission, int version, String asked, boolean again) {}
    }

    private final Guest guest;
    private final Intake intake;
    private final Way way;
    private final Views views;
    private final PageViews shown;

    TopicPages(Guest guest, Intake intake, Way way, Views views, PageViews shown) {
        this.guest = guest;
        this.intake = intake;
        this.way = way;
        this.views = views;
        this.shown = shown;
    }

    @GET
    public Response show(@RestPath String topic, @RestQuery String opened, @RestQuery String again,
        @RestQuery String entry) {
        Visit visit = guest.visit();
        Topic known = views.topic(topic).orElseThrow(NotFoundException::new);
        if (!HealthConsent.given(visit.id)) {
            return Response.seeOther(Way.NOTICE).build();
        }
        Answers said = intake.said(visit);
        Walk walk = intake.walk(visit, said);
        if (!walk.topics().contains(known)) {
            return Response.seeOther(Way.START).build();
        }
        var fresh = new Page(Map.of(), UUID.randomUUID().toString(), 0, guest.language());
        TopicPage page = page(visit, said, walk, walk.page(known, opened != null), fresh, again != null,
            Optional.empty(), Optional.empty(), entry(entry));
        shown.page(visit, topic);
        return Response.ok(page).build();
    }

    @POST
    public Response keep(@RestPath String topic, @RestQuery String opened, MultivaluedMap<String, String> form) {
        Visit visit = guest.visit();
        Topic known = views.topic(topic).orElseThrow(NotFoundException::new);
        if (!HealthConsent.given(visit.id)) {
            return Response.seeOther(Way.NOTICE).build();
        }
        Page posted = page(form);
        Way.Sent sent = way.send(visit.id, known, posted, form);
        return sent.onwards().map(to -> Response.seeOther(to).build())
            .orElseGet(() -> again(visit, known, posted, sent.kept(), opened != null, form.containsKey(Way.AGAIN)));
    }

    /** The same page with the same questions and everything that was typed. */
    private Response again(Visit visit, Topic topic, Page posted, Kept kept, boolean opened, boolean again) {
        Answers said = intake.said(visit);
        Walk walk = intake.walk(visit, said);
        var step = new Walk.Step(topic, walk.open(topic).stream().filter(posted::asks).toList(), opened);
        return FormAgain.with(page(visit, said, walk, step, posted, again, kept.reading(), overtaken(kept),
            entry(posted.fields().getOrDefault(topic.questions().get(0).id() + ".of", List.of("")).get(0))));
    }

    private Optional<Mistake> overtaken(Kept kept) {
        return kept.outcome() == Kept.Outcome.OVERTAKEN ? Optional.of(views.overtaken()) : Optional.empty();
    }

    private Page page(MultivaluedMap<String, String> form) {
        return Page.of(form, one(form, SUBMISSION), one(form, VERSION), guest.language());
    }

    private TopicPage page(Visit visit, Answers said, Walk walk, Walk.Step step, Page page, boolean again,
        Optional<FormReading> reading,
        Optional<Mistake> extra, OptionalInt entry) {
        Topic topic = step.topic();
        List<QuestionView> asked = views.asked(step.questions(), said, reading);
        Progress progress = way.progress(visit, said, topic.id());
        List<Block> blocks = views.blocks(step, asked, said, entry, reading);
        String back = way.before(visit, said, step, again).map(URI::toString).orElse("");
        return new TopicPage(progress, topic.id(),
            views.heading(step), views.lead(step),
            step.opened() ? views.because(walk, step) : "", blocks, mistakes(blocks, extra),
            sent(visit, step, page, again), back,
            !listed(blocks).isEmpty(), listed(blocks));
    }

    private static String listed(List<Block> blocks) {
        return QuestionView.listed(blocks.stream().flatMap(b -> b.questions().stream()).toList());
    }

    private static List<Mistake> mistakes(List<Block> blocks, Optional<Mistake> first) {
        return Stream.concat(first.stream(), blocks.stream().flatMap(b -> b.mistakes().stream())).toList();
    }

    private TopicPage.Sent sent(Visit visit, Walk.Step step, Page page, boolean again) {
        String asked = step.questions().stream().map(Question::id).collect(Collectors.joining(" "));
        return new TopicPage.Sent(Way.kept(step).toString(), page.submission(), intake.version(visit, step.topic()),
            asked, again);
    }

    /** The place of one treatment in its list; nonsense is none. */
    private static OptionalInt entry(String typed) {
        return typed != null && typed.matches("[0-9]{1,3}") ? OptionalInt.of(Integer.parseInt(typed))
            : OptionalInt.empty();
    }

    private static String one(MultivaluedMap<String, String> form, String name) {
        String value = form.getFirst(name);
        return value == null || value.length() > 64 ? UUID.randomUUID().toString() : value;
    }
}
