package foretress.invitation;

import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import org.jboss.resteasy.reactive.RestPath;

/** A code that the desk reads out to a client who has no link at hand. */
@Path("/desk/visits/{id}/code")
public class ReadOutPages {
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ReadOut(Visit visit, String code, long minutes) implements TemplateInstance {}

    private final Visits visits;
    private final Codes codes;
    private final Who who;

    ReadOutPages(Visits visits, Codes codes, Who who) {
        this.visits = visits;
        this.codes = codes;
        this.who = who;
    }

    /** The one answer that is not a redirect after a good form: the code is shown here once and kept nowhere. */
    @POST
    public TemplateInstance readOut(@RestPath String id) {
        Visit visit = UuidParam.of(id).flatMap(visits::find).orElseThrow(NotFoundException::new);
        String code = codes.readOut(visit.id, who.staff().id.toString());
        return new ReadOut(visit, CodeLetters.grouped(code), DoorCode.LIFE.toMinutes());
    }
}
