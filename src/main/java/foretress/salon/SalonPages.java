package foretress.salon;

import foretress.running.AuditEvent;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Meanwhile;
import foretress.web.Mistakes;
import foretress.web.Offered;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.event.Event;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jboss.resteasy.reactive.RestQuery;

/** The salon's particulars after the set-up: a new phone number, other opening hours. What was signed keeps what it said. */
@Path("/salon")
@Produces(MediaType.TEXT_HTML)
public class SalonPages {
    @CheckedTemplate(basePath = "salon", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record SalonPage(Form form, List<String> zones, List<Offered> languages, List<DayField> days, boolean kept,
        Mistakes mistakes)
        implements TemplateInstance {}

    private final Particulars particulars;
    private final Who who;
    private final Meanwhile meanwhile;
    private final Event<AuditEvent> happened;
    private final Event<RulesChanged> changed;
    private final Clock clock;

    SalonPages(Particulars particulars, Who who, Meanwhile meanwhile, Event<AuditEvent> happened,
        Event<RulesChanged> changed, Clock clock) {
        this.particulars = particulars;
        this.who = who;
        this.meanwhile = meanwhile;
        this.happened = happened;
        this.changed = changed;
        this.clock = clock;
    }

    @GET
    public TemplateInstance show(@RestQuery String kept) {
        return page(Particulars.written(Salon.the()), kept != null, new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(MultivaluedMap<String, String> fields) {
        var form = new Form(fields);
        var mistakes = new Mistakes();
        particulars.check(form, mistakes);
        Form shown = mistakes.isEmpty() ? QuarkusTransaction.requiringNew().call(() -> keep(form, mistakes)) : form;
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(shown, false, mistakes));
        }
        return Response.seeOther(URI.create("/salon?kept")).build();
    }

    /** Somebody who changed it meanwhile is not overwritten unseen. */
    private Form keep(Form form, Mistakes mistakes) {
        Salon salon = Salon.toChange();
        Form now = Particulars.written(salon);
        if (meanwhile.isStale(form, now)) {
            return meanwhile.tell(form, now, "particulars", particulars::said, mistakes);
        }
        salon.is(particulars.contact(form), particulars.custom(form));
        happened.fire(new AuditEvent(who.staff().id.toString(), "changed the salon's particulars", ""));
        changed.fire(new RulesChanged(LocalDate.ofInstant(clock.instant(), salon.zoneId()), salon.zoneId()));
        return form;
    }

    private TemplateInstance page(Form form, boolean kept, Mistakes mistakes) {
        return new SalonPage(form, Particulars.zones(), Offered.all("en"), particulars.days(form), kept, mistakes);
    }
}
