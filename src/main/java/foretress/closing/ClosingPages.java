package foretress.closing;

import foretress.closing.Closing.Planned;
import foretress.closing.Closing.Used;
import foretress.decision.DecisionForm;
import foretress.decision.Decisions;
import foretress.decision.KeptDecision;
import foretress.ledger.ByStaff;
import foretress.salon.Who;
import foretress.visit.Booked;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The end of a visit: what was done, what was used, what went wrong; and, once it is closed, the same page to put it right. */
@Path("/visits/{id}/closing")
public class ClosingPages {
    private static final int CONFLICT = 409;

    private final ByStaff byStaff;
    private final Visits visits;
    private final Decisions decisions;
    private final Closings closings;
    private final ClosingPlan plan;
    private final ClosingCheck check;
    private final ClosingView view;
    private final ClosingWords say;
    private final Who who;

    ClosingPages(Visits visits, Decisions decisions, Closings closings, ClosingPlan plan, ClosingCheck check,
        ClosingView view, ClosingWords say, Who who, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.decisions = decisions;
        this.closings = closings;
        this.plan = plan;
        this.check = check;
        this.view = view;
        this.say = say;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        Visit visit = found(id);
        byStaff.looked("closing looked at", id);
        List<Booked> ahead = ahead(visit);
        String fresh = UUID.randomUUID().toString();
        ClosingForm form =
            closings.of(id).map(kept -> ClosingForm.of(closings.read(kept), kept.versionNo(), fresh, ahead))
                .orElseGet(() -> ClosingForm.blank(fresh, Math.max(1, ahead.size()), plan.lines(visit, ahead)));
        return view.page(visit, ahead, form, over(visit), new Mistakes());
    }

    @POST
    public Response close(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        List<Booked> ahead = ahead(visit);
        var sent = new Form(posted);
        ClosingForm form = ClosingForm.from(sent, ahead.size(), planned(visit, ahead));
        if (sent.ticked("more")) {
            return Response.ok(view.page(visit, ahead, form, over(visit), new Mistakes())).build();
        }
        UUID submission =
            DecisionForm.uuid(form.submission()).orElseThrow(() -> new BadRequestException("a form without its name"));
        Mistakes mistakes = check.of(form, ahead, form.version() > 0);
        mistakes.expect(over(visit).isEmpty(), "course-0", over(visit));
        if (!mistakes.isEmpty()) {
            return FormAgain.with(view.page(visit, ahead, form, over(visit), mistakes));
        }
        return closings.keep(id, who.staff(), submission, form.version(), form.closing(ahead))
            ? Response.seeOther(URI.create("/clients/" + visit.client.id + "/card")).build()
            : overtaken(id, ahead, form);
    }

    /** Somebody else closed or corrected it meanwhile: what was typed stays, and what is kept now is said. */
    private Response overtaken(UUID id, List<Booked> ahead, ClosingForm form) {
        KeptClosing kept = closings.of(id).orElseThrow();
        Mistakes mistakes = new Mistakes().add("why", say.overtaken(view.by(kept)));
        ClosingForm again = form.with(kept.versionNo(), UUID.randomUUID().toString());
        return Response.status(CONFLICT).entity(view.page(found(id), ahead, again, "", mistakes)).build();
    }

    private List<Planned> planned(Visit visit, List<Booked> ahead) {
        return closings.of(visit.id).map(kept -> closings.read(kept).used()).orElseGet(() -> plan.lines(visit, ahead))
            .stream().map(Used::planned).toList();
    }

    private String over(Visit visit) {
        boolean open = visit.state == State.DECIDED || visit.state == State.CLOSED;
        return open ? "" : visit.state.isAhead() ? say.not_decided() : say.visit_over();
    }

    /** What was decided to go ahead, with its steps. */
    private List<Booked> ahead(Visit visit) {
        Optional<KeptDecision.Body> body = decisions.latest(visit.id).map(decisions::read);
        return body.stream().flatMap(b -> b.services().stream()).filter(s -> s.verdict().goesAhead())
            .map(s -> new Booked(s.serviceId(), s.stepIds())).toList();
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }
}
