package foretress.skintest;

import foretress.consent.SealedPapers;
import foretress.consent.SignedConsent;
import foretress.invitation.HandOver;
import foretress.invitation.HandOverPurpose;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The staff's side of the consent to a skin test: the tablet goes into the client's hands, and the paper that comes back. */
@Path("/visits/{id}/skin-test")
public class TestHandOver {
    private final Visits visits;
    private final SkinTestGate gate;
    private final TestConsent consent;
    private final SealedPapers papers;
    private final HandOver handOver;
    private final Ledger ledger;
    private final Who who;

    TestHandOver(Visits visits, SkinTestGate gate, TestConsent consent, SealedPapers papers, HandOver handOver,
        Ledger ledger, Who who) {
        this.visits = visits;
        this.gate = gate;
        this.consent = consent;
        this.papers = papers;
        this.handOver = handOver;
        this.ledger = ledger;
        this.who = who;
    }

    @POST
    @Path("/hand-over")
    public Response give(@RestPath UUID id) {
        Visit visit = visits.find(id).orElseThrow(NotFoundException::new);
        return gate.open(visit) ? handOver.inside(visit, HandOverPurpose.FOR_SKIN_TEST)
            : Response.seeOther(URI.create("/visits/" + id + "/skin-test")).build();
    }

    /** The signed paper, the very bytes. */
    @GET
    @Path("/consent/{version}")
    public Response paper(@RestPath UUID id, @RestPath int version) {
        SignedConsent signed = consent.papers(id).stream().filter(one -> one.versionNo() == version).findFirst()
            .orElseThrow(NotFoundException::new);
        ledger.note(who.staff().id.toString(), "consent to a skin test read", signed.id().toString());
        return Response.ok(papers.of(signed)).type("application/pdf")
            .header("Content-Disposition", "inline; filename=\"" + signed.fileName() + "\"").build();
    }
}
