package foretress.card;

import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.Client;
import foretress.visit.Clients;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** One client's record card: visits, findings over time, the hair today, tests, what was done and decided. */
@Path("/clients/{id}/card")
public class CardPages {
    @CheckedTemplate(basePath = "card", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record CardPage(CardView card, boolean merged) implements TemplateInstance {}

    private final Clients clients;
    private final Cards cards;
    private final Ledger ledger;
    private final Who who;

    CardPages(Clients clients, Cards cards, Ledger ledger, Who who) {
        this.clients = clients;
        this.cards = cards;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath UUID id, @RestQuery Optional<String> said) {
        Client client = clients.current(id).orElseThrow(NotFoundException::new);
        ledger.read(who.staff().id.toString(), "record card read", client.id.toString());
        return new CardPage(cards.of(client), said.filter("merged"::equals).isPresent());
    }
}
