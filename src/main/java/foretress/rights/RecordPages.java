package foretress.rights;

import foretress.ledger.Ledger;
import foretress.salon.ProveAgain;
import foretress.salon.Who;
import foretress.visit.Client;
import foretress.visit.Clients;
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
import jakarta.ws.rs.core.StreamingOutput;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The owner exports everything about one client, proving once more who they are: it leaves the house in one file. */
@Path("/clients/{id}/record")
public class RecordPages {
    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RecordPage(String id, String client, Mistakes mistakes) implements TemplateInstance {}

    private final Clients clients;
    private final RecordZip zip;
    private final ProveAgain proveAgain;
    private final RequestWords say;
    private final Ledger ledger;
    private final Who who;

    RecordPages(Clients clients, RecordZip zip, ProveAgain proveAgain, RequestWords say, Ledger ledger, Who who) {
        this.clients = clients;
        this.zip = zip;
        this.proveAgain = proveAgain;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance ask(@RestPath UUID id) {
        return page(found(id), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response export(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Client client = found(id);
        ProveAgain.Outcome proof = proveAgain.with(who.staff(), new Form(posted).exact("password"));
        OptionalLong seconds = proof.seconds();
        var mistakes = new Mistakes();
        mistakes.expect(proof.proved(), "password",
            seconds.isPresent() ? say.password_wait(seconds.getAsLong()) : say.password_wrong());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(seconds, page(client, mistakes));
        }
        ledger.note(who.staff().id.toString(), "everything about a client exported", client.id.toString());
        return answer(zip, client.id);
    }

    static Response answer(RecordZip zip, UUID client) {
        return Response.ok((StreamingOutput) out -> zip.write(client, out)).type("application/zip")
            .header("Content-Disposition", "attachment; filename=\"" + zip.fileName() + "\"").build();
    }

    private Client found(UUID id) {
        return clients.current(id).orElseThrow(NotFoundException::new);
    }

    private static TemplateInstance page(Client client, Mistakes mistakes) {
        return new RecordPage(client.id.toString(), client.fullName(), mistakes);
    }
}
