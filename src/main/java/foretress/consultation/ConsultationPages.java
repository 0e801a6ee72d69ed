package foretress.consultation;

import foretress.bench.BenchOverview;
import foretress.bench.BenchTried;
import foretress.consent.Consents;
import foretress.consent.SignedConsent;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.vertx.http.Compressed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** What the stylist reads at the chair: where the booked service stands, why, what comes first, and what else there is. */
@Path("/visits/{id}")
public class ConsultationPages {
    @CheckedTemplate(basePath = "consultation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ConsultationPage(VisitView reading, List<BenchOverview.Past> tried, boolean insteadOpen)
        implements TemplateInstance {}

    private final Visits visits;
    private final VisitViews readings;
    private final BenchTried bench;
    private final Consents consents;
    private final Ledger ledger;
    private final Who who;

    ConsultationPages(Visits visits, VisitViews readings, BenchTried bench, Consents consents, Ledger ledger,
        Who who) {
        this.visits = visits;
        this.readings = readings;
        this.bench = bench;
        this.consents = consents;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Compressed
    @Transactional
    public TemplateInstance show(@RestPath UUID id, @RestQuery String instead) {
        Visit visit = visits.find(id).orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "consultation read", id.toString());
        return new ConsultationPage(readings.of(visit), bench.past(visit), "open".equals(instead));
    }

    /** The signed consent, the very bytes that the client has. */
    @GET
    @Path("/consent/{version}")
    public Response consent(@RestPath UUID id, @RestPath int version) {
        SignedConsent signed = consents.all(id).stream().filter(c -> c.versionNo() == version).findFirst()
            .orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "consent read", signed.id().toString());
        return Response.ok(consents.pdf(signed)).type("application/pdf")
            .header("Content-Disposition", "inline; filename=\"" + signed.fileName() + "\"").build();
    }
}
