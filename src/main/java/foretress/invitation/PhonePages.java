package foretress.invitation;

import foretress.ledger.Ledger;
import foretress.visit.ClientReader;
import foretress.visit.Clients;
import foretress.web.Form;
import foretress.web.FormAgain;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Set;

/** Where no telephone number is on file and a call may have to be made, the client is asked for one. */
@Path("/answers/phone")
public class PhonePages {
    private static final Set<String> ASKED_ON = Set.of("/answers/care", "/answers/done");

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record PhonePage(String typed, String back, boolean wrong) implements TemplateInstance {}

    private final Guest guest;
    private final Clients clients;
    private final Ledger ledger;

    PhonePages(Guest guest, Clients clients, Ledger ledger) {
        this.guest = guest;
        this.clients = clients;
        this.ledger = ledger;
    }

    @GET
    public Response ask() {
        return guest.isWithoutPhone() ? Response.ok(new PhonePage("", "/answers/done", false)).build()
            : on("/answers/done");
    }

    /** A number already on file is the desk's to change. */
    @POST
    public Response keep(MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        String back = ASKED_ON.contains(form.one("back")) ? form.one("back") : "/answers/done";
        String typed = form.one("phone");
        if (guest.isWithoutPhone() && (typed.isEmpty() || !ClientReader.isCallable(typed))) {
            return FormAgain.with(new PhonePage(typed, back, true));
        }
        if (clients.reachableAt(guest.client().id, typed)) {
            ledger.note("client", "telephone number given", guest.visitId().toString());
        }
        return on(back);
    }

    private static Response on(String to) {
        return Response.seeOther(URI.create(to)).build();
    }
}
