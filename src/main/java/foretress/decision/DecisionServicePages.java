package foretress.decision;

import foretress.assessment.Service;
import foretress.salon.Menu;
import foretress.salon.Who;
import foretress.visit.Booked;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Form;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** Plans another service, or the same without its toner, before the decision. */
@Path("/visits/{id}/decision/services")
public class DecisionServicePages {
    private final Visits visits;
    private final Decisions decisions;
    private final Menu menu;
    private final Who who;

    DecisionServicePages(Visits visits, Decisions decisions, Menu menu, Who who) {
        this.visits = visits;
        this.decisions = decisions;
        this.menu = menu;
        this.who = who;
    }

    @POST
    public Response plan(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Visit visit = visits.find(id).orElseThrow(NotFoundException::new);
        List<Booked> planned = new ArrayList<>();
        for (int place = 0; place < visit.services.size(); place++) {
            planned.add(planned(form.one("service-" + place), form.ticked("without-toner-" + place)));
        }
        try {
            decisions.adapt(id, who.staff(), planned);
            return Response.seeOther(URI.create("/visits/" + id + "/decision")).build();
        } catch (Refusal.Refused overOrOtherwise) {
            return Response.status(Response.Status.CONFLICT).build();
        }
    }

    /** The toner is taken out of a service that has one beside other steps; asked for elsewhere it changes nothing. */
    private Booked planned(String serviceId, boolean withoutToner) {
        Service service = menu.service(serviceId).orElseThrow(BadRequestException::new);
        return new Booked(serviceId, (withoutToner ? service.plain() : service).stepIds());
    }
}
