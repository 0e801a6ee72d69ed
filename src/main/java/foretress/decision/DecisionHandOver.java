package foretress.decision;

import foretress.invitation.HandOver;
import foretress.invitation.HandOverPurpose;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.persistence.LockModeType;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** Hands this tablet to the client to sign at the chair; what was decided before waits for that signature. */
@Path("/visits/{id}/hand-over")
public class DecisionHandOver {
    private final Visits visits;
    private final HandOver handOver;

    DecisionHandOver(Visits visits, HandOver handOver) {
        this.visits = visits;
        this.handOver = handOver;
    }

    @POST
    public Response handOver(@RestPath UUID id) {
        Visit visit = visits.find(id).orElseThrow(NotFoundException::new);
        if (!visit.state.isAhead()) {
            return Response.status(Response.Status.CONFLICT).build();
        }
        return QuarkusTransaction.requiringNew().call(() -> {
            opened(id);
            return handOver.atTheDoor(visit, HandOverPurpose.TO_SIGN);
        });
    }

    /** What was signed stays on file; from here the visit waits for a signature of its own. */
    private static void opened(UUID id) {
        Visit visit = Visit.findById(id, LockModeType.PESSIMISTIC_WRITE);
        if (visit.state == State.DECIDED) {
            visit.moveTo(State.SIGNED);
        }
        if (visit.state == State.SIGNED) {
            visit.moveTo(State.ANSWERING);
            visit.unsign();
        }
    }
}
