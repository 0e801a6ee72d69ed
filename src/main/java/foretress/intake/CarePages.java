package foretress.intake;

import foretress.invitation.Guest;
import foretress.visit.Visit;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;

/** After a severe past reaction: urgent signs first, then what happens now and who calls by when. */
@Path("/answers/care")
public class CarePages {
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record CarePage(String promise, String visitDay) implements TemplateInstance {}

    private final Guest guest;
    private final Care care;
    private final ClientLanguage speech;
    private final PageViews shown;

    CarePages(Guest guest, Care care, ClientLanguage speech, PageViews shown) {
        this.guest = guest;
        this.care = care;
        this.speech = speech;
        this.shown = shown;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        return care.promise(visit).map(promise -> {
            shown.page(visit, Care.PAGE);
            return Response.ok(new CarePage(speech.call(promise), speech.day(visit.startsThere()))).build();
        }).orElseGet(() -> Response.seeOther(Way.START).build());
    }
}
