package foretress.invitation;

import foretress.ledger.ByStaff;
import foretress.ledger.Ledger;
import foretress.post.Post;
import foretress.salon.Staff;
import foretress.salon.Who;
import foretress.visit.Clients;
import foretress.visit.DeskList;
import foretress.visit.Foreseen;
import foretress.visit.PlannedProducts;
import foretress.visit.ServiceWish;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import foretress.visit.When;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** One visit as the desk sees it: its link, how far the answers have come, and what the desk can do about either. */
@Path("/desk/visits/{id}")
public class VisitPages {
    @CheckedTemplate(basePath = "invitation", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record VisitDesk(Visit visit, Booking booking, DeskList.Answered answered, When when,
        Link link, May may, Optional<Foreseen.Told> foreseen, Optional<PlannedProducts.Planned> product,
        String birthWords, String saidWords, String postponed, Optional<String> wish) implements TemplateInstance {}

    /** When, what and with whom. */
    record Booking(String starts, String services, String stylist) {}

    /** What can still be done: anything about the visit, call it off, confirm the birth date the client gave. */
    record May(boolean act, boolean answer, boolean callOff, boolean confirm) {
        static May with(Visit visit) {
            return new May(visit.state.isAhead(), WalkInPages.mayAnswer(visit), visit.state.mayBecome(State.CANCELLED),
                visit.client.birthDate().isPresent() && !visit.client.birthDateConfirmed);
        }
    }

    /** The link's side of the page; {@code mailTo} is there when mail can go out. */
    record Link(String words, String mailedWords, boolean live, boolean locked, boolean canSend,
        Optional<String> mailTo) {}

    private final ByStaff byStaff;
    private final Visits visits;
    private final Invitations invitations;
    private final Clients clients;
    private final Tasks tasks;
    private final DeskList list;
    private final Foreseen foreseen;
    private final PlannedProducts planned;
    private final Post post;
    private final LinkWords words;
    private final ServiceWish wish;
    private final Ledger ledger;
    private final Who who;

    VisitPages(Visits visits, Invitations invitations, Clients clients, Tasks tasks, DeskList list,
        Foreseen foreseen,
        PlannedProducts planned, Post post, LinkWords words, ServiceWish wish, Ledger ledger, Who who,
        ByStaff byStaff) {
        this.byStaff = byStaff;
        this.visits = visits;
        this.invitations = invitations;
        this.clients = clients;
        this.tasks = tasks;
        this.list = list;
        this.foreseen = foreseen;
        this.planned = planned;
        this.post = post;
        this.words = words;
        this.wish = wish;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    public TemplateInstance show(@RestPath String id, @RestQuery Optional<String> said) {
        Visit visit = found(id);
        byStaff.looked("visit read at the desk", visit.id);
        When when = list.when();
        return new VisitDesk(visit,
            new Booking(when.day(visit.startsThere().toLocalDate()) + ", " + when.hour(visit.startsAt),
                list.services(visit), Staff.nameOf(visit.stylistId)),
            DeskList.answered(visit, tasks.stopped()), when,
            link(visit, when), May.with(visit), foreseen.of(visit), planned.of(visit.id),
            words.birthDate(visit.client, when), words.said(said.orElse("")), list.postponed(visit, when),
            wish.of(visit).map(list::service));
    }

    private Link link(Visit visit, When when) {
        Optional<LinkState> link = invitations.state(visit.id);
        Optional<LinkState.State> state = link.map(LinkState::state);
        boolean locked = state.filter(LinkState.State.LOCKED::equals).isPresent();
        return new Link(words.link(link, when),
            words.mailed(post.latest(visit.id, LinkLetters.KIND), post.canSend(), when),
            invitations.live(visit.id).isPresent(), locked, post.canSend(),
            visit.client.email().filter(any -> post.canSend()));
    }

    @POST
    @Path("/unlock")
    public Response unlock(@RestPath String id) {
        Visit visit = found(id);
        invitations.unlock(visit.id, staff());
        return back(visit, "unlocked");
    }

    @POST
    @Path("/revoke")
    public Response revoke(@RestPath String id) {
        Visit visit = found(id);
        invitations.revoke(visit.id, staff().toString());
        return back(visit, "revoked");
    }

    @POST
    @Path("/birth-date")
    public Response confirmBirthDate(@RestPath String id) {
        Visit visit = found(id);
        clients.confirmBirthDate(visit.client.id);
        tasks.kept(visit.id, Task.Kind.CONFIRM_BIRTH_DATE, staff());
        ledger.note(staff().toString(), "birth date confirmed", visit.client.id.toString());
        return back(visit, "confirmed");
    }

    @POST
    @Path("/cancel")
    public Response cancel(@RestPath String id) {
        Visit visit = found(id);
        if (visit.state.mayBecome(State.CANCELLED)) {
            visits.callOff(visit.id);
            ledger.note(staff().toString(), "visit cancelled", visit.id.toString());
        }
        return back(visit, "cancelled");
    }

    private Visit found(String id) {
        return UuidParam.of(id).flatMap(visits::find).orElseThrow(NotFoundException::new);
    }

    private UUID staff() {
        return who.staff().id;
    }

    private static Response back(Visit visit, String said) {
        return Response.seeOther(URI.create("/desk/visits/" + visit.id + "?said=" + said)).build();
    }
}
