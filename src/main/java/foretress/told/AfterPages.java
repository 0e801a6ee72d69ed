package foretress.told;

import foretress.consent.Consents;
import foretress.invitation.Guest;
import foretress.visit.Visit;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** What the client's own link opens once the service took place. */
@Path("/answers/after")
public class AfterPages {
    @CheckedTemplate(basePath = "told", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record AfterPage(String day, boolean copy, boolean photos) implements TemplateInstance {}

    private final Guest guest;
    private final Consents consents;
    private final SentPhotos photos;
    private final ClientSpeech speech;

    AfterPages(Guest guest, Consents consents, SentPhotos photos, ClientSpeech speech) {
        this.guest = guest;
        this.consents = consents;
        this.photos = photos;
        this.speech = speech;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        return visit.state.tookPlace()
            ? Response.ok(new AfterPage(speech.day(visit.startsAt), consents.latest(visit.id).isPresent(),
                !photos.of(visit.id).isEmpty())).build()
            : Response.seeOther(URI.create("/answers")).build();
    }
}
