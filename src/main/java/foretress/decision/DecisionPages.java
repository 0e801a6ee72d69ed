package foretress.decision;

import foretress.assessment.Assessment;
import foretress.bench.OwedLine;
import foretress.decision.DecisionCheck.Checked;
import foretress.ledger.Ledger;
import foretress.salon.ProveAgain;
import foretress.salon.Who;
import foretress.visit.State;
import foretress.visit.Visit;
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
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** A named person decides about each planned service, on the assessment that stands on the page. */
@Path("/visits/{id}/decision")
public class DecisionPages {
    @CheckedTemplate(basePath = "decision", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DecisionPage(DecisionText.Head head, Stage stage, List<DecisionShown.Made> made,
        DecisionShown.Before before, List<DecisionShown.Planned> planned, List<DecisionShown.Offer> offered,
        DecisionForm form,
        boolean owner, boolean against, String plan, Mistakes mistakes) implements TemplateInstance {}

    /**
     * How far the visit is.
     *
     * @param open a decision can be made
     * @param owed at least, while it is not
     * @param recorded it was just made
     */
    record Stage(boolean open, String notYet, List<OwedLine> owed, boolean recorded, boolean closable) {}

    @CheckedTemplate(basePath = "decision", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DecisionOutdated(DecisionText.Head head, List<DecisionText.Changed> changes, DecisionForm form)
        implements TemplateInstance {}

    @CheckedTemplate(basePath = "decision", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    record DecisionRefused(DecisionText.Head head, String title, String words) implements TemplateInstance {}

    private final Visits visits;
    private final CurrentAssessment assessed;
    private final Decisions decisions;
    private final DecisionCheck check;
    private final DecisionShown shown;
    private final DecisionText text;
    private final DecisionWords say;
    private final ProveAgain proveAgain;
    private final Ledger ledger;
    private final Who who;

    DecisionPages(Visits visits, CurrentAssessment assessed, Decisions decisions, DecisionCheck check,
        DecisionShown shown, DecisionText text, DecisionWords say,
        ProveAgain proveAgain, Ledger ledger, Who who) {
        this.visits = visits;
        this.assessed = assessed;
        this.decisions = decisions;
        this.check = check;
        this.shown = shown;
        this.text = text;
        this.say = say;
        this.proveAgain = proveAgain;
        this.ledger = ledger;
        this.who = who;
    }

    @GET
    @Transactional
    public TemplateInstance show(@RestPath UUID id, @RestQuery Optional<String> said,
        @RestQuery Optional<String> plan) {
        Visit visit = found(id);
        ledger.read(who.staff().id.toString(), "decision looked at", id.toString());
        CurrentAssessment.Now now = assessed.now(visit);
        return page(visit, now, DecisionForm.blank(now.id(), decisions.versions(id), visit.services.size()),
            new Mistakes(), said.filter("recorded"::equals).isPresent(), plan.orElse(""));
    }

    @POST
    public Response decide(@RestPath UUID id, MultivaluedMap<String, String> posted) {
        var fields = new Form(posted);
        Visit visit = found(id);
        DecisionForm form = DecisionForm.from(fields, visit.services.size());
        if (DecisionForm.uuid(form.submission()).filter(s -> decisions.alreadyMade(id, s)).isPresent()) {
            return recorded(id);
        }
        CurrentAssessment.Now now = assessed.now(visit);
        if (fields.is("act", "look")) {
            return Response.ok(page(visit, now, form.lookedAt(now.id(), decisions.versions(id)), new Mistakes(), false))
                .build();
        }
        if (!form.isOn(now.id(), decisions.versions(id))) {
            return outdated(visit, form, now);
        }
        Checked checked = check.check(visit, now, form, who.staff());
        return checked.refusal().map(refusal -> refused(visit, refusal))
            .orElseGet(() -> decide(visit, now, form, checked, fields));
    }

    private Response decide(Visit visit, CurrentAssessment.Now now, DecisionForm form, Checked checked, Form fields) {
        Mistakes mistakes = checked.mistakes();
        if (checked.against() && mistakes.isEmpty()) {
            ProveAgain.Outcome proof = proveAgain.with(who.staff(), fields.exact("password"));
            if (proof.seconds().isPresent()) {
                return wait(visit, now, form, proof.seconds().getAsLong());
            }
            mistakes.expect(proof.proved(), "password", say.password_wrong());
        }
        if (!mistakes.isEmpty()) {
            return FormAgain.with(page(visit, now, form, mistakes, false));
        }
        try {
            decisions.record(visit.id, who.staff(),
                form.wanted(checked.against() ? Optional.of(form.reason()) : Optional.empty()));
            return recorded(visit.id);
        } catch (Refusal.Refused meanwhile) {
            // The page asked for the same refusals a moment ago: somebody was faster.
            return outdated(visit, form, assessed.now(found(visit.id)));
        }
    }

    private Response wait(Visit visit, CurrentAssessment.Now now, DecisionForm form, long seconds) {
        Mistakes mistakes = new Mistakes().add("password", say.password_wait(seconds));
        return Response.status(429).header(HttpHeaders.RETRY_AFTER, seconds)
            .entity(page(visit, now, form, mistakes, false)).build();
    }

    private Response outdated(Visit visit, DecisionForm form, CurrentAssessment.Now now) {
        Optional<Assessment> then =
            DecisionForm.uuid(form.assessment()).flatMap(assessment -> assessed.then(visit, assessment));
        return Response.status(409).entity(new DecisionOutdated(text.head(visit), shown.since(visit, then, now), form))
            .build();
    }

    private Response refused(Visit visit, Refusal refusal) {
        boolean nobody = refusal == Refusal.LASTING;
        ledger.note(who.staff().id.toString(),
            nobody ? "decision nobody can make refused" : "decision only the owner can make refused",
            visit.id.toString());
        return Response.status(403)
            .entity(new DecisionRefused(text.head(visit), nobody ? say.nobody_title() : say.only_owner_title(),
                nobody ? say.nobody_text() : say.only_owner_text(text.owners())))
            .build();
    }

    private TemplateInstance page(Visit visit, CurrentAssessment.Now now, DecisionForm form, Mistakes mistakes,
        boolean recorded) {
        return page(visit, now, form, mistakes, recorded, "");
    }

    /** @param plan the service that somebody was about to plan instead; empty for none */
    private TemplateInstance page(Visit visit, CurrentAssessment.Now now, DecisionForm form, Mistakes mistakes,
        boolean recorded, String plan) {
        List<DecisionShown.Planned> planned = shown.planned(visit, now, form, who.isOwner());
        boolean against = planned.stream().anyMatch(DecisionShown.Planned::mayBeGoneAgainst);
        return new DecisionPage(text.head(visit),
            new Stage(shown.open(visit), shown.notYet(visit), shown.owedAtLeast(visit), recorded,
                visit.state == State.DECIDED),
            shown.made(visit), shown.before(visit, now), planned, shown.offered(), form, who.isOwner(), against, plan,
            mistakes);
    }

    private Visit found(UUID id) {
        return visits.find(id).orElseThrow(NotFoundException::new);
    }

    private static Response recorded(UUID id) {
        return Response.seeOther(URI.create("/visits/" + id + "/decision?said=recorded")).build();
    }
}
