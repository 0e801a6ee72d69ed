package foretress.intake;

import foretress.consent.Consents;
import foretress.invitation.Guest;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;

/** Taking consent back, as easily as it was given: one press, asked once more, kept, the visit stopped, the salon told. */
@Path("/answers/take-back")
public class TakeBackPages {
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TakeBack(String visitAt) implements TemplateInstance {}

    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record TakenBack(String at, String salon) implements TemplateInstance {}

    private final Guest guest;
    private final Consents consents;
    private final NoticeConsent notices;
    private final Visits visits;
    private final TakenBackElsewhere elsewhere;
    private final Tasks tasks;
    private final Ledger ledger;
    private final ClientLanguage speech;
    private final Clock clock;

    TakeBackPages(Guest guest, Consents consents, NoticeConsent notices, Visits visits, TakenBackElsewhere elsewhere,
        Tasks tasks, Ledger ledger,
        ClientLanguage speech, Clock clock) {
        this.guest = guest;
        this.consents = consents;
        this.notices = notices;
        this.visits = visits;
        this.elsewhere = elsewhere;
        this.tasks = tasks;
        this.ledger = ledger;
        this.speech = speech;
        this.clock = clock;
    }

    @GET
    public Response ask() {
        Visit visit = guest.visit();
        return may(visit) ? Response.ok(new TakeBack(speech.dayAndTime(visit.startsThere()))).build()
            : Response.seeOther(Way.START).build();
    }

    /** No redirect after this form: with the visit over, the salon's own tablet opens nothing more. */
    @POST
    public Response takeBack() {
        if (!may(guest.visit())) {
            return Response.seeOther(Way.START).build();
        }
        return Response.ok(new TakenBack(speech.dayAndTime(stop().atZone(guest.visit().zone())), Salon.the().name))
            .build();
    }

    @Transactional
    Instant stop() {
        Visit visit = guest.visit();
        Instant now = clock.instant();
        notices.takeBack(visit.id, guest.language());
        elsewhere.around(visit, () -> visits.withdraw(visit.id));
        tasks.promise(visit, Task.Kind.CALL, Staff.byId(visit.stylistId).filter(s -> s.active).map(s -> s.id),
            NextClosing.after(now, Salon.the()));
        ledger.note("client", "consent taken back", visit.id.toString());
        return now;
    }

    /** What was never signed needs no taking back. */
    private boolean may(Visit visit) {
        return consents.latest(visit.id).isPresent() && visit.state.mayBecome(State.WITHDRAWN);
    }
}
