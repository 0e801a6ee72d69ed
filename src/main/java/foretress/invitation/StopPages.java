package foretress.invitation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;

/** Stopping for now: everything is kept; a borrowed phone can be made to forget. */
@Path("/answers/stop")
public class StopPages {
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Stop() implements TemplateInstance {}

    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record Forgotten() implements TemplateInstance {}

    private final Guest guest;
    private final ClientSessions doors;
    private final GuestFilter filter;

    StopPages(Guest guest, ClientSessions doors, GuestFilter filter) {
        this.guest = guest;
        this.doors = doors;
        this.filter = filter;
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
        return Response.ok(new Forgotten()).cookie(filter.forgotten())
            .header("Clear-Site-Data", "\"cache\", \"storage\"").build();
    }
}
