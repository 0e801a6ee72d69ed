package foretress.skintest;

import foretress.invitation.Guest;
import foretress.visit.Visit;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;

/** Behind the link and the door: what the short visit is for, and why. */
@Path("/answers/short-visit")
public class GuestVisitPages {
    @CheckedTemplate(basePath = "skintest", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ShortVisitPage(String when, String visitAt, boolean tufts) implements TemplateInstance {}

    private final Guest guest;
    private final TestVisits shortVisits;

    GuestVisitPages(Guest guest, TestVisits shortVisits) {
        this.guest = guest;
        this.shortVisits = shortVisits;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        return TestVisit.standing(visit.id)
            .map(planned -> Response.ok(new ShortVisitPage(TestMails.moment(planned.startsAt(), visit),
                TestMails.moment(visit.startsAt, visit), shortVisits.tufts(visit))).build())
            .orElseGet(() -> Response.seeOther(URI.create("/answers")).build());
    }
}
