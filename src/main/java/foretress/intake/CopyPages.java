package foretress.intake;

import foretress.consent.Consents;
import foretress.consent.SealedPapers;
import foretress.consent.SignedConsent;
import foretress.invitation.Guest;
import foretress.ledger.Ledger;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.Optional;

/** The client's copy: the very bytes the salon keeps. */
@Path("/answers/copy")
public class CopyPages {
    private final Guest guest;
    private final Consents consents;
    private final SealedPapers papers;
    private final Ledger ledger;

    CopyPages(Guest guest, Consents consents, SealedPapers papers, Ledger ledger) {
        this.papers = papers;
        this.guest = guest;
        this.consents = consents;
        this.ledger = ledger;
    }

    @GET
    public Response copy() {
        Optional<SignedConsent> signed = consents.latest(guest.visitId());
        if (signed.isEmpty()) {
            return Response.seeOther(Way.START).build();
        }
        ledger.note("client", "copy of consent downloaded", signed.get().id().toString());
        return Response.ok(papers.of(signed.get())).type("application/pdf")
            .header("Content-Disposition", "attachment; filename=\"" + signed.get().fileName() + "\"").build();
    }
}
