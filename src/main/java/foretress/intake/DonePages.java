package foretress.intake;

import foretress.assessment.Weight;
import foretress.consent.Consents;
import foretress.consent.SignedConsent;
import foretress.invitation.Guest;
import foretress.questionnaire.Answers;
import foretress.salon.Salon;
import foretress.visit.Visit;
import foretress.web.ClientWords;
import io.quarkus.arc.All;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** After signing: what comes next. */
@Path("/answers/done")
public class DonePages {
    @CheckedTemplate(basePath = "intake", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DonePage(String lead, boolean consented, String signedAt, String visitAt, String signAgain, String call,
        List<NextStep.Step> steps, List<String> tests, LastDaysAsked lastDays, boolean mayChange, String postponed,
        boolean handBack)
        implements TemplateInstance {}

    /**
     * What is asked about the scalp shortly before the visit.
     *
     * @param from the first day it is; empty when nothing is left to ask
     * @param address where it is asked now; empty before that day
     */
    public record LastDaysAsked(String from, String address) {}

    private final Guest guest;
    private final Consents consents;
    private final Intake intake;
    private final Plans plans;
    private final List<NextStep> next;
    private final ClientLanguage speech;
    private final Care care;
    private final Way way;
    private final Refusals refusals;

    DonePages(Guest guest, Consents consents, Intake intake, Plans plans, @All List<NextStep> next,
        ClientLanguage speech,
        Care care, Way way, Refusals refusals) {
        this.guest = guest;
        this.consents = consents;
        this.intake = intake;
        this.plans = plans;
        this.next = next;
        this.speech = speech;
        this.care = care;
        this.way = way;
        this.refusals = refusals;
    }

    @GET
    public Response done() {
        Visit visit = guest.visit();
        Optional<SignedConsent> signed = consents.latest(visit.id);
        if (signed.isEmpty()) {
            return Response.seeOther(visit.state.takesAnswers() ? Way.START : Way.AFTER).build();
        }
        return Response.ok(new DonePage(
            prevented(visit) ? speech.say().done_lead_prevented(Salon.the().name)
                : speech.say().done_lead(Salon.the().name),
            !prevented(visit),
            speech.dayAndTime(signed.get().signedAt().atZone(visit.zone())), speech.dayAndTime(visit.startsThere()),
            signAgain(visit), care.promise(visit).map(speech::call).orElse(""),
            next.stream().flatMap(one -> one.of(visit).stream()).toList(), tests(visit), lastDays(visit),
            visit.state.takesAnswers(),
            speech.postponed(visit), guest.isOnHandedTablet())).build();
    }

    private LastDaysAsked lastDays(Visit visit) {
        Answers said = intake.said(visit);
        boolean left = visit.state.takesAnswers() && intake.topics(visit, said).stream()
            .flatMap(topic -> intake.put(visit, topic, said).stream())
            .anyMatch(q -> q.onlyNear() && said.to(q.id()).isEmpty());
        return new LastDaysAsked(left ? speech.day(LastDays.from(visit).atStartOfDay(visit.zone())) : "",
            way.lastDays(visit, said).map(URI::toString).orElse(""));
    }

    /** Whether answers or a refused test rule the service out: then answers were signed, and no consent to it. */
    private boolean prevented(Visit visit) {
        return visit.standing().filter(Weight.PREVENTS.code()::equals).isPresent() || !refusals.of(visit).isEmpty();
    }

    /** Where an answer that changed since is read back and signed; blank while what was signed stands. */
    private String signAgain(Visit visit) {
        return visit.signed().isPresent() || !visit.state.isAhead() ? ""
            : way.next(visit, intake.said(visit)).toString();
    }

    private List<String> tests(Visit visit) {
        ClientWords say = speech.say();
        Set<String> refused = refusals.of(visit);
        return plans.of(visit, intake.said(visit)).owed().stream()
            .filter(o -> !refused.contains(o.test())).map(o -> o.lastOpenStart()
                .map(last -> say.done_test(speech.words().plainTest(o.test()),
                    speech.dayAndTime(last.atZone(visit.zone()))))
                .orElseGet(() -> say.done_test_late(speech.words().plainTest(o.test()))))
            .toList();
    }
}
