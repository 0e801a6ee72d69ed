package foretress.rights;

import foretress.consent.Consents;
import foretress.intake.ClientLanguage;
import foretress.intake.NextClosing;
import foretress.intake.NoticeConsent;
import foretress.intake.TakenBackElsewhere;
import foretress.invitation.Guest;
import foretress.ledger.Ledger;
import foretress.salon.Salon;
import foretress.vault.SealedJson;
import foretress.visit.State;
import foretress.visit.Task;
import foretress.visit.Tasks;
import foretress.visit.Visit;
import foretress.visit.Visits;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.qute.i18n.Localized;
import io.quarkus.qute.i18n.MessageBundles;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Taking consent back once the visit is over, by the client's own link and without a code: GDPR Art. 7(3). */
@Path("/answers/withdraw")
public class WithdrawPages {
    private static final URI DONE = URI.create("/answers/withdraw/done");
    private static final URI AFTER = URI.create("/answers/after");

    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record WithdrawPage(List<String> says) implements TemplateInstance {}

    @CheckedTemplate(basePath = "rights", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record WithdrawnPage(String at) implements TemplateInstance {}

    /** What is kept: the words that were confirmed, as they were read. */
    record Confirmed(String title, List<String> says, String pressed) {}

    private final Guest guest;
    private final Consents consents;
    private final NoticeConsent notices;
    private final Visits visits;
    private final TakenBackElsewhere elsewhere;
    private final Tasks tasks;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final ClientLanguage speech;
    private final Clock clock;

    WithdrawPages(Guest guest, Consents consents, NoticeConsent notices, Visits visits, TakenBackElsewhere elsewhere,
        Tasks tasks,
        SealedJson sealed,
        Ledger ledger, ClientLanguage speech, Clock clock) {
        this.guest = guest;
        this.consents = consents;
        this.notices = notices;
        this.visits = visits;
        this.elsewhere = elsewhere;
        this.tasks = tasks;
        this.sealed = sealed;
        this.ledger = ledger;
        this.speech = speech;
        this.clock = clock;
    }

    @GET
    public Response ask() {
        return may(guest.visit()) ? Response.ok(new WithdrawPage(says(guest.visit()))).build()
            : Response.seeOther(AFTER).build();
    }

    /** Pressed twice it is taken back once. */
    @POST
    public Response takeBack() {
        return Response.seeOther(takenBack().isPresent() ? DONE : AFTER).build();
    }

    /** What was taken back, and when. */
    @GET
    @Path("/done")
    public Response done() {
        return Withdrawal.ofVisit(guest.visitId()).map(Withdrawal::takenBackAt)
            .map(at -> Response.ok(new WithdrawnPage(speech.dayAndTime(at.atZone(guest.visit().zone())))))
            .orElseGet(() -> Response.seeOther(AFTER)).build();
    }

    @Transactional
    Optional<Instant> takenBack() {
        Visit visit = Visit.findById(guest.visitId(), LockModeType.PESSIMISTIC_WRITE);
        if (!may(visit)) {
            return Withdrawal.ofVisit(visit.id).map(Withdrawal::takenBackAt);
        }
        Instant now = clock.instant();
        Confirmed confirmed =
            new Confirmed(speech.say().take_back_title(), says(visit), speech.say().take_back_do());
        new Withdrawal(visit, guest.language(), now, sealed.sealing(visit.client.id, confirmed)).persist();
        notices.takeBack(visit.id, guest.language());
        elsewhere.around(visit, () -> visits.withdraw(visit.id));
        tasks.promise(visit, Task.Kind.TAKEN_BACK, Optional.empty(), NextClosing.after(now, Salon.the()));
        ledger.note("client", "consent taken back after the visit", visit.id.toString());
        return Optional.of(now);
    }

    /** What was never signed needs no taking back; before the visit it is taken back where it was given. */
    private boolean may(Visit visit) {
        return visit.state == State.CLOSED && consents.latest(visit.id).isPresent();
    }

    private List<String> says(Visit visit) {
        RightsWords say = MessageBundles.get(RightsWords.class, Localized.Literal.of(guest.language()));
        return List.of(say.withdraw_lead(Salon.the().name, speech.dayAndTime(visit.startsThere())),
            say.withdraw_stays());
    }
}
