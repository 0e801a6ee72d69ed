package foretress.intake;

import foretress.consent.ConsentCopies;
import foretress.consent.ConsentInput;
import foretress.consent.ConsentText;
import foretress.consent.Consents;
import foretress.consent.Evidence;
import foretress.consent.PaperSize;
import foretress.consent.SignatureMark;
import foretress.consent.SignedConsent;
import foretress.invitation.Entrance;
import foretress.invitation.Invitation;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.salon.Salon;
import foretress.salon.Staff;
import foretress.visit.State;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.RequestScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Gathers the evidence, signs, and moves the visit on, all of it or nothing. */
@RequestScoped
public class Signing {

    private final Consents consents;
    private final ConsentDraft draft;
    private final ConsentCopies copies;
    private final Assessments assessments;
    private final TakenBackElsewhere elsewhere;
    private final Plans plans;
    private final Knowledge knowledge;
    private final Intake intake;
    private final PageViews shown;
    private final Guardians guardians;
    private final Clock clock;

    Signing(Consents consents, ConsentDraft draft, ConsentCopies copies, Assessments assessments,
        TakenBackElsewhere elsewhere, Plans plans,
        Knowledge knowledge, Intake intake,
        PageViews shown, Guardians guardians, Clock clock) {
        this.draft = draft;
        this.copies = copies;
        this.guardians = guardians;
        this.intake = intake;
        this.shown = shown;
        this.consents = consents;
        this.assessments = assessments;
        this.elsewhere = elsewhere;
        this.plans = plans;
        this.knowledge = knowledge;
        this.clock = clock;
    }

    /**
     * What the client did on the page.
     *
     * @param textSha256 hash of the text that stood on the page
     * @param agreed ids of the statements ticked
     * @param entrance how the client came in
     * @param guardian who signed too, for a client too young to sign alone
     * @param device kept in the record only, never printed
     */
    public record Act(UUID submission, String textSha256, List<String> agreed, Entrance entrance,
        Optional<Evidence.Guardian> guardian, Optional<Evidence.Device> device) {}

    boolean alreadySigned(UUID visitId, UUID submission) {
        return consents.all(visitId).stream().anyMatch(c -> c.isOf(submission));
    }

    /** @throws IllegalStateException when the client is too young to sign alone, and nobody signed too */
    public void sign(Visit visit, Answers said, ConsentInput input, SignatureMark mark, Act act) {
        if (act.guardian().isEmpty() && guardians.needed(visit)) {
            throw new IllegalStateException("a child does not sign alone");
        }
        PaperSize size = Salon.the().paperSize == Salon.PaperSize.LETTER ? PaperSize.LETTER : PaperSize.A4;
        List<ConsentText> copied = QuarkusTransaction.requiringNew().call(() -> draft.copies(visit, said));
        consents.sign(input, mark, evidence(visit, said, input, act), size, (locked, signed) -> {
            moveOn(locked, said, signed);
            copied.forEach(text -> copies.keep(signed, text));
        });
    }

    private void moveOn(Visit visit, Answers said, SignedConsent signed) {
        if (elsewhere.isOpen(visit)) {
            visit.signed(signed.signedAt()); // what waited for a signature weighs no more
        }
        assessments.renew(visit, said);
        if (visit.state == State.ANSWERING || visit.state == State.DECIDED) {
            visit.moveTo(State.SIGNED);
        }
        visit.signed(signed.signedAt());
        visit.owes(plans.first(visit, said));
    }

    private Evidence evidence(Visit visit, Answers said, ConsentInput input, Act act) {
        Entrance entrance = act.entrance();
        HealthConsent consent = HealthConsent.newest(visit.id).orElseThrow();
        Instant now = clock.instant();
        return new Evidence(act.submission(),
            new Evidence.Invited(entrance.invitationId(), way(entrance), sender(entrance.sentBy()),
                entrance.sentAt(), entrance.openedAt()),
            new Evidence.BirthDateCheck(asked(entrance), entrance.tries(), entrance.openedAt()),
            new Evidence.HealthConsent(consent.noticeVersion(), consent.noticeSha256(), consent.saidAt()),
            new Evidence.Text(input.language(), act.textSha256(), intake.code(visit, SignedConsent.ANSWERS, said),
                knowledge.ruleSet().hash()),
            new Evidence.Seen(shown.pages(visit),
                ReadBack.of(visit.id, intake.code(visit, ReadBack.ANSWERS, said)).orElseThrow().confirmedAt(),
                shown.last(visit, "sign")),
            act.agreed(), Evidence.Moment.of(now, visit.zone()), act.device(), act.guardian(),
            PaperForm.of(visit.id).map(Signing::typed));
    }

    private static Evidence.Typed typed(PaperForm paper) {
        return new Evidence.Typed(Staff.byId(paper.typedBy()).map(s -> s.name).orElseGet(() -> Salon.the().name),
            paper.typedAt(), paper.signedOn());
    }

    private static Evidence.BirthDateResult asked(Entrance entrance) {
        if (entrance.vouched()) {
            return Evidence.BirthDateResult.ASKED;
        }
        return entrance.birthDateOnFile() ? Evidence.BirthDateResult.CONFIRMED : Evidence.BirthDateResult.GIVEN;
    }

    private static Evidence.Way way(Entrance entrance) {
        if (entrance.onTablet()) {
            return Evidence.Way.TABLET;
        }
        return entrance.way() == Invitation.Way.MAILED ? Evidence.Way.MAIL : Evidence.Way.SHOWN;
    }

    /** The person who sent the link, by name; the salon where the server sent it by itself. */
    private static String sender(String actor) {
        return Staff.all().stream().filter(s -> s.id.toString().equals(actor)).map(s -> s.name).findFirst()
            .orElseGet(() -> Salon.the().name);
    }

}
