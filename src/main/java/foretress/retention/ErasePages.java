package foretress.retention;

import foretress.ledger.Ledger;
import foretress.rights.RequestWords;
import foretress.salon.ProveAgain;
import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
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
import java.util.Optional;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The owner erases everything about one client, proving once more who they are: nothing brings it back. */
@Path("/clients/{id}/erase")
public class ErasePages {
    @CheckedTemplate(basePath = "retention", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ErasePage(String id, String client, String until, Optional<String> against, Mistakes mistakes)
        implements TemplateInstance {}

    private final Clients clients;
    private final Erasing erasing;
    private final ProveAgain proveAgain;
    private final RequestWords say;
    private final Ledger ledger;
    private final Who who;
    private final Language language;

    ErasePages(Clients clients, Erasing erasing, ProveAgain proveAgain, RequestWords say, Ledger ledger, Who who,
        Language language) {
        this.clients = clients;
        this.erasing = erasing;
        this.proveAgain = proveAgain;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
        this.language = language;
    }

    @GET
    public TemplateInstance ask(@RestPath UUID id) {
        Client client = found(id);
        ledger.read(who.staff().id.toString(), "erasing a client looked at", client.id.toString());
        return page(client, new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response erase(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Client client = found(id);
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), new Form(posted).exact("password"));
        OptionalLong seconds = proof.seconds();
        var mistakes = new Mistakes();
        mistakes.expect(proof.proved(), "password",
            seconds.isPresent() ? say.password_wait(seconds.getAsLong()) : say.password_wrong());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(seconds, page(client, mistakes));
        }
        if (erasing.erase(client.id, who.staff().id).isPresent()) {
            return Response.seeOther(URI.create("/clients/" + client.id + "/erase")).build();
        }
        return Response.seeOther(URI.create("/desk")).build();
    }

    private Client found(UUID id) {
        return clients.current(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(Client client, Mistakes mistakes) {
        return new ErasePage(client.id.toString(), client.fullName(), until(client),
            erasing.against(client.id).map(this::said),
            mistakes);
    }

    private String until(Client client) {
        return say.erase_until(Salon.the().dates(language.getTag()).full(erasing.keptUntil(client)));
    }

    private String said(Erasing.Against against) {
        return switch (against) {
            case VISIT_AHEAD -> say.erase_visit_ahead();
            case COMPLAINT_OPEN -> say.erase_complaint_open();
        };
    }
}
