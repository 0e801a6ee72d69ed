package foretress.consultation;

import foretress.bench.BenchOverview;
import foretress.bench.BenchTried;
import foretress.consent.ConsentCopies;
import foretress.consent.Consents;
import foretress.consent.SealedPapers;
import foretress.consent.SignedConsent;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.told.ReactionViews;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Language;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.vertx.http.Compressed;
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
    record ConsultationPage(VisitView reading, List<BenchOverview.Past> tried, List<ReactionViews.Line> told,
        boolean insteadOpen)
        implements TemplateInstance {}

    private final Visits visits;
    private final VisitViews readings;
    private final BenchTried bench;
    private final ReactionViews reactions;
    private final Consents consents;
    private final SealedPapers papers;
    private final ConsentCopies copies;
    private final CopyPaper paper;
    private final Language language;
    private final Ledger ledger;
    private final Who who;

    ConsultationPages(Visits visits, VisitViews readings, BenchTried bench, ReactionViews reactions, Consents consents,
        SealedPapers papers,
        ConsentCopies copies, CopyPaper paper, Language language, Ledger ledger, Who who) {
        this.reactions = reactions;
        this.copies = copies;
        this.paper = paper;
        this.language = language;
        this.visits = visits;
        this.readings = readings;
        this.bench = bench;
        this.consents = consents;
        this.papers = papers;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Compressed
    public TemplateInstance show(@RestPath UUID id, @RestQuery String instead) {
        Visit visit = visits.find(id).orElseThrow(NotFoundException::new);
        ledger.read(who.staff().id.toString(), "consultation read", id.toString());
        return new ConsultationPage(readings.of(visit), bench.past(visit),
            reactions.of(visit).stream().filter(line -> line.struck().isEmpty()).toList(), "open".equals(instead));
    }

    /** The same in the words of whoever reads it: a copy that nobody signed, and says so. */
    @GET
    @Path("/consent/{version}/copy")
    public Response copy(@RestPath UUID id, @RestPath int version) {
        SignedConsent signed = signed(id, version);
        ConsentCopies.Copy copy = copies.of(signed, language.getTag()).orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "copy of consent in another language read", signed.id().toString());
        return Response.ok(paper.print(visits.find(id).orElseThrow(), signed, copy)).type("application/pdf")
            .header("Content-Disposition", "inline; filename=\"copy-" + signed.fileName() + "\"").build();
    }

    private SignedConsent signed(UUID id, int version) {
        return consents.all(id).stream().filter(c -> c.versionNo() == version).findFirst()
            .orElseThrow(NotFoundException::new);
    }

    /** The signed consent, the very bytes that the client has. */
    @GET
    @Path("/consent/{version}")
    public Response consent(@RestPath UUID id, @RestPath int version) {
        SignedConsent signed = signed(id, version);
        ledger.note(who.staff().id.toString(), "consent read", signed.id().toString());
        return Response.ok(papers.of(signed)).type("application/pdf")
            .header("Content-Disposition", "inline; filename=\"" + signed.fileName() + "\"").build();
    }
}
