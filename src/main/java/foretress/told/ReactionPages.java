package foretress.told;

import foretress.invitation.Guest;
import foretress.salon.Staff;
import foretress.skintest.TestSpot;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedHashMap;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * By her own link a client tells of a reaction, at any time. What cannot wait stands first, before anything is asked; at the spot of a
 * skin test it is told on the test's own page. Nothing that was ever answered is shown here.
 */
@Path(ReactionPages.AT)
public class ReactionPages {
    static final String AT = "/answers/reaction";
    private static final URI START = URI.create("/answers");

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReactionFirst(boolean tested) implements TemplateInstance {}

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReactionPage(List<Choice> felt, List<Choice> began, List<Choice> where, Form form, String submission,
        Mistakes mistakes) implements TemplateInstance {}

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReactionTold(boolean urgent, String promise, boolean ahead) implements TemplateInstance {}

    public record Choice(String code, String words, boolean chosen) {}

    private final Guest guest;
    private final Reactions reactions;
    private final TestSpot spot;
    private final Tasks tasks;
    private final ClientSpeech speech;

    ReactionPages(Guest guest, Reactions reactions, TestSpot spot, Tasks tasks, ClientSpeech speech) {
        this.guest = guest;
        this.reactions = reactions;
        this.spot = spot;
        this.tasks = tasks;
        this.speech = speech;
    }

    @GET
    public TemplateInstance first() {
        return new ReactionFirst(spot.isWatched(guest.visit()));
    }

    /** Where a reaction at the spot of the skin test is told. */
    @POST
    @Path("/spot")
    public Response spot() {
        return Response.seeOther(URI.create(spot.page(guest.visit()).map(page -> page + "/look").orElse(AT))).build();
    }

    @GET
    @Path("/tell")
    public Response ask() {
        return reactions.mayBeTold(guest.visit())
            ? Response.ok(page(new Form(new MultivaluedHashMap<>()), UUID.randomUUID().toString(), new Mistakes()))
                .build()
            : Response.seeOther(START).build();
    }

    @POST
    @Path("/tell")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response tell(MultivaluedMap<String, String> posted) {
        if (!reactions.mayBeTold(guest.visit())) {
            return Response.seeOther(START).build();
        }
        var form = new Form(posted);
        UUID submission = Submissions.of(form);
        var mistakes = new Mistakes();
        Optional<Telling> telling = new ToldForm(form).read(mistakes, speech.say(), speech.tag());
        if (telling.isEmpty()) {
            return FormAgain.with(page(form, submission.toString(), mistakes));
        }
        reactions.tell(submission, guest.visitId(), telling.get());
        return Response.seeOther(URI.create(AT + "/told")).build();
    }

    @GET
    @Path("/told")
    public Response told() {
        Visit visit = guest.visit();
        return reactions.newest(visit.id).map(reactions::read)
            .map(telling -> Response.ok(new ReactionTold(telling.urgent(), promise(visit), visit.state.isAhead()))
                .build())
            .orElseGet(() -> Response.seeOther(URI.create(AT)).build());
    }

    private String promise(Visit visit) {
        return tasks.open(visit.id, Task.Kind.SPEAK_AT_ONCE).map(task -> {
            String until = speech.dayAndTime(task.dueAt);
            return task.owner().flatMap(Staff::byId).map(staff -> speech.say().told_promise(staff.name, until))
                .orElseGet(() -> speech.say().told_promise_desk(until));
        }).orElseGet(() -> speech.say().told_spoken());
    }

    private TemplateInstance page(Form form, String submission, Mistakes mistakes) {
        List<Choice> began = new ArrayList<>(Arrays.stream(Showed.values()).map(one -> new Choice(one.code(),
            speech.words().option("colour-reaction-soon", one.code()), form.is("began", one.code()))).toList());
        began.add(new Choice(ToldForm.UNKNOWN, speech.say().began_unknown(), form.is("began", ToldForm.UNKNOWN)));
        return new ReactionPage(
            Arrays.stream(Felt.values()).map(one -> new Choice(one.code(),
                speech.words().option(Felt.QUESTION, one.code()), form.is("felt", one.code()))).toList(),
            began, Arrays.stream(Where.values())
                .map(one -> new Choice(one.code(), words(one), form.is("where", one.code()))).toList(),
            form, submission, mistakes);
    }

    private String words(Where where) {
        return switch (where) {
            case SCALP -> speech.say().where_scalp();
            case EDGE -> speech.say().where_edge();
            case FACE -> speech.say().where_face();
            case BODY -> speech.say().where_body();
        };
    }
}
