package foretress.alternative;

import foretress.assessment.Service;
import foretress.consent.Consents;
import foretress.invitation.Guest;
import foretress.visit.Visit;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestForm;

/** Behind the link: what a client whose service is off could have instead, and which of it she would like. */
@Path(InsteadPages.AT)
public class InsteadPages {
    static final String AT = "/answers/instead";
    private static final URI START = URI.create("/answers");

    @CheckedTemplate(basePath = "alternative", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record ClientInstead(String lead, List<ClientWays.Offered> ways, Optional<String> asked)
        implements TemplateInstance {}

    private final Guest guest;
    private final Consents consents;
    private final ClientWays ways;
    private final Wishes wishes;
    private final InsteadWords say;

    InsteadPages(Guest guest, Consents consents, ClientWays ways, Wishes wishes, InsteadWords say) {
        this.guest = guest;
        this.consents = consents;
        this.ways = ways;
        this.wishes = wishes;
        this.say = say;
    }

    @GET
    public Response show() {
        Visit visit = guest.visit();
        List<Service> off = off(visit);
        if (off.isEmpty()) {
            return Response.seeOther(START).build();
        }
        String services = off.stream().map(Service::id).map(ways::name).collect(Collectors.joining(", "));
        return Response.ok(
            new ClientInstead(say.client_lead(services), ways.of(visit), wishes.of(visit).map(ways::name))).build();
    }

    /** @param wish the id of a service that is offered here; empty to want none after all */
    @POST
    public Response say(@RestForm Optional<String> wish) {
        Visit visit = guest.visit();
        if (off(visit).isEmpty()) {
            return Response.seeOther(START).build();
        }
        Optional<String> wanted = wish.filter(id -> !id.isEmpty());
        if (wanted.isEmpty() || ways.of(visit).stream().anyMatch(way -> way.id().equals(wanted.get()))) {
            wishes.say(visit.id, wanted);
        }
        return Response.seeOther(URI.create(AT)).build();
    }

    /** Once everything was answered and signed, and while the visit is still to come. */
    private List<Service> off(Visit visit) {
        return consents.latest(visit.id).isEmpty() || !visit.state.isAhead() ? List.of() : ways.off(visit);
    }
}
