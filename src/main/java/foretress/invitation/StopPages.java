package foretress.invitation;

import foretress.web.PublicAddress;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;

/** Stopping for now: everything is kept; a borrowed phone can be made to forget. */
@Path("/answers/stop")
public class StopPages {
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Stop() implements TemplateInstance {}

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Forgotten() implements TemplateInstance {}

    private final Guest guest;
    private final Doors doors;
    private final PublicAddress address;

    StopPages(Guest guest, Doors doors, PublicAddress address) {
        this.guest = guest;
        this.doors = doors;
        this.address = address;
    }

    @GET
    public TemplateInstance stop() {
        return new Stop();
    }

    /** Closes this browser's door and clears what the browser kept of us. */
    @POST
    @Path("/forget")
    public Response forget() {
        doors.close(guest.doorId());
        var gone = new NewCookie.Builder(address.cookieName(GuestFilter.COOKIE)).value("").path("/").httpOnly(true)
            .secure(address.secure()).sameSite(NewCookie.SameSite.LAX).maxAge(0).build();
        return Response.ok(new Forgotten()).cookie(gone).header("Clear-Site-Data", "\"cache\", \"storage\"").build();
    }
}
