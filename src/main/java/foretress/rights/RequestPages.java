package foretress.rights;

import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.salon.Who;
import foretress.visit.Client;
import foretress.visit.Clients;
import foretress.web.ChairTime;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
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
import java.time.Clock;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** What clients ask about their data, before the owner: in whose words, until when, and the answer. */
@Path("/requests")
public class RequestPages {
    private static final int LONGEST = 4000;

    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RequestList(List<Line> lines) implements TemplateInstance {}

    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RequestPage(Line one, String words, String language, String closed, String said, String typed,
        Mistakes mistakes) implements TemplateInstance {}

    public record Line(String id, String clientId, String client, String kind, String made, String by, boolean late) {}

    private final Requests requests;
    private final Clients clients;
    private final RequestWords say;
    private final ChairTime time;
    private final Language language;
    private final Ledger ledger;
    private final Who who;
    private final Clock clock;

    RequestPages(Requests requests, Clients clients, RequestWords say, ChairTime time, Language language, Ledger ledger,
        Who who,
        Clock clock) {
        this.requests = requests;
        this.clients = clients;
        this.say = say;
        this.time = time;
        this.language = language;
        this.ledger = ledger;
        this.who = who;
        this.clock = clock;
    }

    @GET
    public TemplateInstance list() {
        ledger.read(who.staff().id.toString(), "requests about data read", "");
        return new RequestList(requests.open().stream().map(this::line).toList());
    }

    @GET
    @Path("/{request}")
    public TemplateInstance show(@RestPath UUID request) {
        RightsRequest made = found(request);
        ledger.note(who.staff().id.toString(), "request about data read", made.id().toString());
        return page(made, "", new Mistakes());
    }

    @POST
    @Path("/{request}/close")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response close(@RestPath UUID request, MultivaluedMap<String, String> posted) {
        RightsRequest made = found(request);
        String answer = new Form(posted).one("answer");
        var mistakes = new Mistakes();
        mistakes.expect(!answer.isEmpty() && answer.length() <= LONGEST, "answer", say.request_answer_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(made, answer, mistakes));
        }
        requests.close(made.id(), answer, who.staff().id);
        return Response.seeOther(URI.create("/requests/" + made.id())).build();
    }

    private RightsRequest found(UUID id) {
        return requests.find(id).orElseThrow(NotFoundException::new);
    }

    private TemplateInstance page(RightsRequest made, String typed, Mistakes mistakes) {
        Requests.Words words = requests.read(made);
        String closed = made.closedAt().map(at -> say.request_closed(
            made.closedBy().flatMap(Staff::byId).map(staff -> staff.name).orElse(""), time.dayAndTime(there(at))))
            .orElse("");
        return new RequestPage(line(made), words.words(), words.language(), closed, requests.answer(made), typed,
            mistakes);
    }

    private static ZonedDateTime there(Instant at) {
        return at.atZone(Salon.the().zoneId());
    }

    private Line line(RightsRequest made) {
        Client client = clients.current(made.clientId()).orElseThrow();
        return new Line(made.id().toString(), client.id.toString(), client.fullName(), made.kind().heard(say),
            say.request_made(time.dayAndTime(there(made.madeAt()))),
            say.request_by(Salon.the().dates(language.getTag()).full(made.dueOn())),
            there(clock.instant()).toLocalDate().isAfter(made.dueOn()));
    }
}
