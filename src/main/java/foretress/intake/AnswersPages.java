package foretress.intake;

import foretress.invitation.Guest;
import foretress.visit.Visit;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;

/** The way in: on to the notice, to the first open question, to reading back, to what was signed; first to what was said last time. */
@Path("/answers")
public class AnswersPages {
    private final Guest guest;
    private final Intake intake;
    private final Way way;
    private final LastTime lastTime;

    AnswersPages(Guest guest, Intake intake, Way way, LastTime lastTime) {
        this.lastTime = lastTime;
        this.guest = guest;
        this.intake = intake;
        this.way = way;
    }

    @GET
    @Transactional
    public Response next() {
        Visit visit = guest.visit();
        boolean given = HealthConsent.given(visit.id);
        if (visit.state.hasAnswers() && !visit.state.takesAnswers()) {
            return Response.seeOther(visit.signed().isPresent() ? Way.DONE : Way.AFTER).build();
        }
        if (lastTime.of(visit).isPresent() && (given || guest.seesEarlierVisits())) {
            return Response.seeOther(Way.LAST_TIME).build();
        }
        if (!given) {
            return Response.seeOther(Way.NOTICE).build();
        }
        return Response.seeOther(way.resume(visit, intake.said(visit))).build();
    }
}
