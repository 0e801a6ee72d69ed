package foretress.salon;

import foretress.web.Form;
import foretress.web.StaffLanguage;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** In which language one reads one's own screens; chosen on the page behind one's name. */
@Path("/my-language")
public class StaffLanguagePages {
    private final Who who;

    StaffLanguagePages(Who who) {
        this.who = who;
    }

    /** What is not offered changes nothing. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response choose(MultivaluedMap<String, String> fields) {
        String chosen = new Form(fields).one("language");
        if (StaffLanguage.TAGS.contains(chosen)) {
            QuarkusTransaction.requiringNew().run(() -> Staff.byId(who.staff().id).orElseThrow().reads(chosen));
        }
        return Response.seeOther(URI.create("/password")).build();
    }
}
