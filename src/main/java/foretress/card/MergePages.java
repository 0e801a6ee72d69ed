package foretress.card;

import foretress.card.CardView.Found;
import foretress.intake.EarlierFindings;
import foretress.intake.Renewal;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.visit.Visits;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
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
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Makes one record of two of the same person, after both were looked at side by side. */
@Path("/clients/{id}/merge")
public class MergePages {
    private static final int LONGEST_QUERY = 100;

    @CheckedTemplate(basePath = "card", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record MergeFind(String id, String client, String query, List<Side> found) implements TemplateInstance {}

    @CheckedTemplate(basePath = "card", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record MergePage(Side one, Side other, boolean bornDiffer, List<Stands> stands, String keep, Mistakes mistakes)
        implements TemplateInstance {}

    /** One of the two records. */
    public record Side(String id, String client, String born, String phone, String email, List<String> visits,
        List<Found> findings) {}

    /** A finding that stands afterwards, and the visit it is from. */
    public record Stands(Found found, String when) {}

    private final Clients clients;
    private final Visits visits;
    private final EarlierFindings earlier;
    private final Renewal renewal;
    private final CardText text;
    private final CardWords say;
    private final Ledger ledger;
    private final Who who;

    MergePages(Clients clients, Visits visits, EarlierFindings earlier, Renewal renewal, CardText text, CardWords say,
        Ledger ledger, Who who) {
        this.clients = clients;
        this.visits = visits;
        this.earlier = earlier;
        this.renewal = renewal;
        this.text = text;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Transactional
    public TemplateInstance show(@RestPath UUID id, @RestQuery Optional<String> with, @RestQuery Optional<String> q) {
        Client client = found(id);
        Optional<Client> other =
            with.flatMap(MergePages::uuid).flatMap(clients::current).filter(c -> !c.id.equals(client.id));
        if (other.isPresent()) {
            ledger.note(who.staff().id.toString(), "records compared", client.id.toString());
            return preview(client, other.get(), "", new Mistakes());
        }
        ledger.read(who.staff().id.toString(), "clients searched", client.id.toString());
        String query = q.map(String::strip).filter(words -> words.length() <= LONGEST_QUERY).orElse(client.familyName);
        List<Side> found =
            clients.search(query, 0).clients().stream().filter(c -> !c.id.equals(client.id)).map(this::brief).toList();
        return new MergeFind(client.id.toString(), client.fullName(), query, found);
    }

    @POST
    @Transactional
    public Response merge(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var form = new Form(posted);
        Client client = found(id);
        Client other = uuid(form.one("with")).flatMap(clients::find).orElseThrow(NotFoundException::new);
        if (client.mergedInto().isPresent() || other.mergedInto().isPresent() || client.id.equals(other.id)) {
            return done(clients.current(client.id).orElseThrow());
        }
        var mistakes = new Mistakes();
        Optional<Client> kept =
            Stream.of(client, other).filter(c -> c.id.toString().equals(form.one("keep"))).findFirst();
        mistakes.expect(kept.isPresent(), "keep", say.merge_keep_missing());
        mistakes.expect(form.ticked("sure"), "sure", say.merge_sure_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(preview(client, other, form.one("keep"), mistakes));
        }
        Client gone = kept.get().id.equals(client.id) ? other : client;
        clients.merge(kept.get().id, gone.id, who.staff().id);
        renewal.ofClient(kept.get().id);
        ledger.note(who.staff().id.toString(), "records merged, this one stays", kept.get().id.toString());
        ledger.note(who.staff().id.toString(), "records merged, this one goes into another", gone.id.toString());
        return done(kept.get());
    }

    private static Response done(Client client) {
        return Response.seeOther(URI.create("/clients/" + client.id + "/card?said=merged")).build();
    }

    private TemplateInstance preview(Client one, Client other, String keep, Mistakes mistakes) {
        List<Stands> stands = EarlierFindings
            .heaviest(Stream.of(one, other).flatMap(c -> earlier.standing(c.id).stream()).toList()).stream()
            .map(e -> new Stands(text.found(e.finding(), e.finding().weight()),
                say.visit_of(text.moment(e.visit().startsAt))))
            .toList();
        boolean differ =
            one.birthDate().isPresent() && other.birthDate().isPresent() && !one.birthDate().equals(other.birthDate());
        return new MergePage(side(one), side(other), differ, stands, keep, mistakes);
    }

    private Side side(Client client) {
        List<String> all = visits.of(client.id).stream().map(v -> text.moment(v.startsAt) + ": "
            + String.join(", ", v.services.stream().map(s -> text.service(s.serviceId)).toList())).toList();
        return new Side(client.id.toString(), client.fullName(),
            client.birthDate().map(text::day).orElseGet(say::not_on_file),
            client.phone().orElseGet(say::not_on_file), client.email().orElseGet(say::not_on_file), all,
            earlier.standing(client.id).stream().map(e -> text.found(e.finding(), e.finding().weight())).toList());
    }

    private Side brief(Client client) {
        return new Side(client.id.toString(), client.fullName(),
            client.birthDate().map(text::day).orElseGet(say::not_on_file),
            client.phone().orElseGet(say::not_on_file), client.email().orElseGet(say::not_on_file), List.of(),
            List.of());
    }

    private Client found(UUID id) {
        return clients.current(id).orElseThrow(NotFoundException::new);
    }

    private static Optional<UUID> uuid(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
