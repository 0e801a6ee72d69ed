package foretress.bench;

import foretress.intake.Refusals;
import foretress.knowledge.Knowledge;
import foretress.knowledge.Words;
import foretress.ledger.Ledger;
import foretress.salon.Who;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.web.Form;
import foretress.web.FormAgain;
import foretress.web.Language;
import foretress.web.Mistakes;
import foretress.web.StylistWords;
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
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** The tests a client does not want, and what they said when somebody talked with them about it. Only that opens a refused test again. */
@Path("/visits/{id}/refused")
public class RefusedPages {
    /** A test that is not wanted. */
    public record Test(String id, String name) {}

    @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record RefusedPage(String address, String client, List<Test> tests, boolean ahead, Mistakes mistakes)
        implements TemplateInstance {}

    private final Visits visits;
    private final Refusals refusals;
    private final Knowledge knowledge;
    private final Language language;
    private final StylistWords say;
    private final Ledger ledger;
    private final Who who;

    RefusedPages(Visits visits, Refusals refusals, Knowledge knowledge, Language language, StylistWords say,
        Ledger ledger, Who who) {
        this.visits = visits;
        this.refusals = refusals;
        this.knowledge = knowledge;
        this.language = language;
        this.say = say;
        this.ledger = ledger;
        this.who = who;
    }

    public static String at(Visit visit) {
        return "/visits/" + visit.id + "/refused";
    }

    @GET
    public TemplateInstance show(@RestPath UUID id) {
        ledger.read(who.staff().id.toString(), "refused tests read", id.toString());
        return page(found(id), new Mistakes());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response record(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        Visit visit = found(id);
        if (!visit.state.isAhead()) {
            return Response.seeOther(URI.create(at(visit))).build();
        }
        Set<String> wanted =
            new Form(posted).all("wanted").stream().filter(refusals.of(visit)::contains).collect(Collectors.toSet());
        var mistakes = new Mistakes();
        mistakes.expect(!wanted.isEmpty(), "wanted", say.refused_missing());
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(visit, mistakes));
        }
        refusals.wantedAfterAll(visit.id, wanted, who.staff().id);
        return Response.seeOther(URI.create("/visits/" + visit.id)).build();
    }

    private TemplateInstance page(Visit visit, Mistakes mistakes) {
        Words words = knowledge.words(language.getTag());
        return new RefusedPage("/visits/" + visit.id, visit.client.fullName(),
            refusals.of(visit).stream().sorted().map(id -> new Test(id, words.test(id))).toList(),
            visit.state.isAhead(), mistakes);
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }
}
