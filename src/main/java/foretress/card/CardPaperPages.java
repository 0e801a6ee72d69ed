package foretress.card;

import foretress.consent.PaperSize;
import foretress.consent.RecordPaper;
import foretress.consent.RecordText;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** The record card as PDF: all of it, or one visit with every answer. */
@Path("/clients/{id}/card/paper")
public class CardPaperPages {
    private final Clients clients;
    private final Visits visits;
    private final Cards cards;
    private final CardPaper paper;
    private final Ledger ledger;
    private final Who who;
    private final Clock clock;

    CardPaperPages(Clients clients, Visits visits, Cards cards, CardPaper paper, Ledger ledger, Who who, Clock clock) {
        this.clients = clients;
        this.visits = visits;
        this.cards = cards;
        this.paper = paper;
        this.ledger = ledger;
        this.who = who;
        this.clock = clock;
    }

    @GET
    @Transactional
    public Response whole(@RestPath UUID id) {
        Client client = clients.current(id).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        return printed(client, paper.whole(cards.of(client), now), now);
    }

    @GET
    @Path("/{visit}")
    @Transactional
    public Response visit(@RestPath UUID id, @RestPath UUID visit) {
        Client client = clients.current(id).orElseThrow(NotFoundException::new);
        Visit found = visits.find(visit).filter(v -> v.client.id.equals(client.id)).orElseThrow(NotFoundException::new);
        Instant now = clock.instant();
        return printed(client, paper.visit(cards.of(client), found, now), now);
    }

    private Response printed(Client client, RecordText text, Instant now) {
        ledger.note(who.staff().id.toString(), "record card printed", client.id.toString());
        byte[] pdf = RecordPaper.print(text, PaperSize.valueOf(Salon.the().paperSize.name()), now);
        return Response.ok(pdf, "application/pdf").header("Content-Disposition", "inline; filename=\"card.pdf\"")
            .build();
    }
}
