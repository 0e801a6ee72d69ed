package foretress.invitation;

import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.visit.WalkIn;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.jboss.resteasy.reactive.RestPath;

/** The desk hands this tablet to a client who answers here and now. */
@Path("/desk/visits/{id}/hand-over")
@ApplicationScoped
public class WalkInPages implements WalkIn {
    private final Visits visits;
    private final HandOver handOver;

    WalkInPages(Visits visits, HandOver handOver) {
        this.visits = visits;
        this.handOver = handOver;
    }

    @POST
    public Response give(@RestPath String id) {
        Visit visit = UuidParam.of(id).flatMap(visits::find).orElseThrow(NotFoundException::new);
        return mayAnswer(visit) ? handTablet(visit, false)
            : Response.seeOther(URI.create("/desk/visits/" + visit.id)).build();
    }

    static boolean mayAnswer(Visit visit) {
        return visit.state == State.BOOKED || visit.state.takesAnswers();
    }

    /** A birth date that staff typed from the client's own mouth is not asked a second time; any other is asked at the door. */
    @Override
    public Response handTablet(Visit visit, boolean known) {
        return known && visit.client.birthDate().isPresent() ? handOver.inside(visit, HandOverPurpose.WALK_IN)
            : handOver.atTheDoor(visit, HandOverPurpose.WALK_IN);
    }
}
