package foretress.consultation;

import foretress.invitation.Invitations;
import foretress.salon.Sessions;
import foretress.salon.Who;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.persistence.LockModeType;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/**
 * Hands this tablet to the client: whoever was signed in is signed out first, so that the browser the client holds reaches
 * nothing but this visit's own door.
 */
@Path("/visits/{id}/hand-over")
public class DecisionHandOver {
    private final Visits visits;
    private final Invitations invitations;
    private final Sessions sessions;
    private final Who who;

    DecisionHandOver(Visits visits, Invitations invitations, Sessions sessions, Who who) {
        this.visits = visits;
        this.invitations = invitations;
        this.sessions = sessions;
        this.who = who;
    }

    @POST
    public Response handOver(@RestPath UUID id) {
        Visit visit = visits.find(id).orElseThrow(NotFoundException::new);
        if (!visit.state.isAhead()) {
            return Response.status(Response.Status.CONFLICT).build();
        }
        String door = QuarkusTransaction.requiringNew().call(() -> opened(id));
        return Response.seeOther(URI.create(door)).cookie(sessions.end(who)).header("Clear-Site-Data", "\"cache\"").build();
    }

    /** What was signed stays on file; from here the visit waits for a signature of its own. */
    private String opened(UUID id) {
        Visit visit = Visit.findById(id, LockModeType.PESSIMISTIC_WRITE);
        if (visit.state == State.DECIDED) {
            visit.moveTo(State.SIGNED);
        }
        if (visit.state == State.SIGNED) {
            visit.moveTo(State.ANSWERING);
            visit.unsign();
        }
        return invitations.handOver(id, who.staff().id.toString());
    }
}
