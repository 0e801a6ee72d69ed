package foretress.told;

import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** A complaint before the owner: the words, by when they must be acknowledged, and the answer. */
@Path("/complaints/{complaint}")
public class ComplaintOwnerPages {
    private static final int LONGEST = 4000;

    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ComplaintOwner(ComplaintViews.Whole one, String answer, Mistakes mistakes) implements TemplateInstance {}

    private final ComplaintsMade complaints;
    private final ComplaintViews views;
    private final ToldWords say;
    private final Ledger ledger;
    private final Who who;

    ComplaintOwnerPages(ComplaintsMade complaints, ComplaintViews views, ToldWords say, Ledger ledger, Who who) {
        this.complaints = complaints;
        this.views = views;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID complaint) {
        ComplaintMade made = found(complaint);
        ledger.note(who.staff().id.toString(), "complaint read", made.id().toString());
        return new ComplaintOwner(views.of(made), "", new Mistakes());
    }

    @POST
    @Path("/acknowledge")
    public Response acknowledge(@RestPath UUID complaint) {
        complaints.acknowledge(found(complaint).id(), who.staff().id);
        return back(complaint);
    }

    @POST
    @Path("/answer")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response answer(@RestPath UUID complaint, MultivaluedMap<String, String> posted) {
        ComplaintMade made = found(complaint);
        String answer = new Form(posted).one("answer");
        var mistakes = new Mistakes();
        mistakes.expect(!answer.isEmpty() && answer.length() <= LONGEST, "answer", say.answer_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(new ComplaintOwner(views.of(made), answer, mistakes));
        }
        complaints.answer(made.id(), answer, who.staff().id);
        return back(complaint);
    }

    private ComplaintMade found(UUID id) {
        return complaints.find(id).orElseThrow(NotFoundException::new);
    }

    private static Response back(UUID complaint) {
        return Response.seeOther(URI.create("/complaints/" + complaint)).build();
    }
}
