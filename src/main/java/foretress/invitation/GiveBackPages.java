package foretress.invitation;

import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** The client gives the salon's tablet back: it forgets them before anything else, and opens nothing until staff sign in. */
@Path(GiveBackPages.PATH)
public class GiveBackPages {
    static final String PATH = "/answers/give-back";

    private final Guest guest;
    private final ClientSessions doors;
    private final GuestFilter filter;

    GiveBackPages(Guest guest, ClientSessions doors, GuestFilter filter) {
        this.guest = guest;
        this.doors = doors;
        this.filter = filter;
    }

    @POST
    public Response giveBack() {
        if (!guest.isOnHandedTablet()) {
            return Response.seeOther(URI.create("/answers/stop")).build();
        }
        String to = guest.after();
        doors.close(guest.doorId());
        return Response.seeOther(URI.create("/sign-in?to=" + URLEncoder.encode(to, StandardCharsets.UTF_8)))
            .cookie(filter.forgotten()).header("Clear-Site-Data", "\"cache\", \"storage\"").build();
    }
}
