package foretress.visit;

import foretress.ledger.ByStaff;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Who;
import foretress.web.DateWords;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Mistakes;
import foretress.web.SpokenLanguages;
import foretress.web.StaffLanguage;
import foretress.web.StaffWords;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** Finding a client, and putting right how to reach them. */
@Path("/desk/clients")
public class ClientPages {
    private static final int LONGEST_QUERY = 100;

    @CheckedTemplate(basePath = "visit", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ClientSearch(String query, Clients.Found found, String earlier, String later, When when)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "visit", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ClientCard(Client client, ClientForm person, int version, List<MonthChoice> months,
        List<TongueChoice> tongues, List<DeskList.Row> visits, boolean kept, List<Earlier> before, Mistakes mistakes)
        implements TemplateInstance {}

    /** What stood on file until a correction, in one line. */
    public record Earlier(String until, String line) {}

    private final ByStaff byStaff;
    private final Clients clients;
    private final ClientReader reader;
    private final DeskList list;
    private final Ledger ledger;
    private final StaffWords say;
    private final Who who;
    private final SpokenLanguages spoken;
    private final StaffLanguage staff;

    ClientPages(Clients clients, ClientReader reader, DeskList list, Ledger ledger, StaffWords say, Who who,
        SpokenLanguages spoken, StaffLanguage staff, ByStaff byStaff) {
        this.byStaff = byStaff;
        this.staff = staff;
        this.spoken = spoken;
        this.clients = clients;
        this.reader = reader;
        this.list = list;
        this.ledger = ledger;
        this.say = say;
        this.who = who;
    }

    @GET
    public TemplateInstance search(@RestQuery Optional<String> q, @RestQuery Optional<String> page) {
        String query = q.map(String::strip).filter(words -> words.length() <= LONGEST_QUERY).orElse("");
        int at = page.filter(number -> number.matches("[1-9][0-9]{0,4}")).map(Integer::parseInt).orElse(0);
        if (!query.isEmpty()) {
            byStaff.looked("clients searched");
        }
        Clients.Found found = query.isEmpty() ? new Clients.Found(List.of(), 0, false) : clients.search(query, at);
        return new ClientSearch(query, found, at > 0 ? address(query, at - 1) : "",
            found.more() ? address(query, at + 1) : "", list.when());
    }

    private static String address(String query, int page) {
        return "/desk/clients?q=" + URLEncoder.encode(query, StandardCharsets.UTF_8)
            + (page > 0 ? "&page=" + page : "");
    }

    @GET
    @Path("/{id}")
    public TemplateInstance card(@RestPath String id, @RestQuery Optional<String> said) {
        Client client = found(id);
        byStaff.looked("client's particulars read", client.id);
        return page(client, ClientForm.of(client), client.version, said.filter("kept"::equals).isPresent(),
            new Mistakes());
    }

    @POST
    @Path("/{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response correct(@RestPath String id, MultivaluedMap<String, String> posted) {
        Client client = found(id);
        var form = new Form(posted);
        ClientForm typed = ClientForm.from(form);
        var mistakes = new Mistakes();
        Clients.Person person = reader.read(typed, mistakes);
        if (!form.one("version").equals("" + client.version)) {
            mistakes.add("given", say.client_changed());
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(client, typed, client.version, false, mistakes));
        }
        clients.correct(client.id, person, client.version, who.staff().id.toString());
        ledger.note(who.staff().id.toString(), "client corrected", client.id.toString());
        return Response.seeOther(URI.create("/desk/clients/" + client.id + "?said=kept")).build();
    }

    private TemplateInstance page(Client client, ClientForm typed, int version, boolean kept, Mistakes mistakes) {
        return new ClientCard(client, typed, version, MonthChoice.all(typed.birthMonth(), staff.locale()),
            TongueChoice.of(spoken, typed.language(), staff.locale()),
            list.of(client.id), kept, before(client), mistakes);
    }

    private List<Earlier> before(Client client) {
        return clients.before(client.id).stream().map(one -> {
            Clients.Person person = one.person();
            return new Earlier(new DateWords(staff.locale()).dateAndHour(one.until().atZone(Salon.the().zoneId())),
                Stream.of(Optional.of(person.givenName() + " " + person.familyName()),
                    person.birthDate().map(new DateWords(staff.locale())::date), person.email(), person.phone(),
                    Optional.of(person.language())).flatMap(Optional::stream).collect(Collectors.joining(", ")));
        }).toList();
    }

    private Client found(String id) {
        return BookingReader.id(id).flatMap(clients::current).orElseThrow(NotFoundException::new);
    }
}
