package foretress.card;

import foretress.assessment.Assessment;
import foretress.assessment.Weight;
import foretress.card.CardView.DecisionView;
import foretress.card.CardView.DoneView;
import foretress.card.CardView.PaperView;
import foretress.card.CardView.VisitView;
import foretress.closing.Closing;
import foretress.closing.ClosingSaid;
import foretress.closing.ClosingWords;
import foretress.closing.Closings;
import foretress.closing.Course;
import foretress.closing.HairPhotos;
import foretress.closing.KeptClosing;
import foretress.consent.Consents;
import foretress.decision.Decisions;
import foretress.decision.KeptDecision;
import foretress.decision.ServiceDecision;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.KeptAssessment;
import foretress.told.ComplaintViews;
import foretress.told.ReactionViews;
import foretress.told.SentPhotoViews;
import foretress.visit.State;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a record card shows of one visit: what was found, decided and done, and what was signed. */
@RequestScoped
class CardVisits {
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Decisions decisions;
    private final Closings closings;
    private final Consents consents;
    private final HairPhotos photos;
    private final SentPhotoViews sent;
    private final ReactionViews reactions;
    private final ComplaintViews complaints;
    private final CardText text;
    private final ClosingSaid said;
    private final ClosingWords closing;
    private final CardWords say;

    CardVisits(Assessments assessments, BookedChemistry chemistry, Decisions decisions, Closings closings,
        Consents consents, HairPhotos photos, SentPhotoViews sent, ReactionViews reactions, ComplaintViews complaints,
        CardText text,
        ClosingSaid said, ClosingWords closing, CardWords say) {
        this.reactions = reactions;
        this.complaints = complaints;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.decisions = decisions;
        this.closings = closings;
        this.consents = consents;
        this.photos = photos;
        this.sent = sent;
        this.text = text;
        this.said = said;
        this.closing = closing;
        this.say = say;
    }

    /** Has at hand what is kept of these visits: one statement a kind, however many they are. */
    void ready(List<UUID> visits) {
        KeptAssessment.ready(visits);
        decisions.ready(visits);
        closings.ready(visits);
        photos.ready(visits);
        sent.ready(visits);
        consents.ready(visits);
    }

    VisitView of(Visit visit) {
        boolean readable = visit.state != State.WITHDRAWN;
        Optional<Assessment> assessed =
            readable ? KeptAssessment.newest(visit.id).map(assessments::read) : Optional.empty();
        Optional<Weight> standing = assessed.flatMap(a -> visit.standing()).map(Weight.BY_CODE::get);
        return new VisitView(visit.id.toString(), text.moment(visit.startsAt), services(visit),
            text.staff(visit.stylistId), text.state(visit.state),
            standing, standing.map(text::word).orElse(""),
            assessed.map(a -> text.found(a.spoken(), chemistry.services(visit))).orElse(List.of()),
            decisions.all(visit.id).stream().map(this::decision).toList(),
            closings.versions(visit.id).stream().map(this::done).toList(), text.photos(visit.id, photos.of(visit.id)),
            sent.of(visit),
            consents.all(visit.id).stream()
                .map(c -> new PaperView(c.versionNo(), say.consent(c.versionNo(), text.moment(c.signedAt()))))
                .toList(),
            Stream.concat(reactions.said(visit).stream(), complaints.said(visit).stream()).toList());
    }

    private String services(Visit visit) {
        return visit.services.stream().map(s -> text.service(s.serviceId)).collect(Collectors.joining(", "));
    }

    private DecisionView decision(KeptDecision kept) {
        KeptDecision.Body body = decisions.read(kept);
        List<String> lines = new ArrayList<>();
        body.services().forEach(one -> lines.addAll(lines(one)));
        if (!body.reason().isEmpty()) {
            lines.add(say.reason(body.reason()));
            if (body.alone()) {
                lines.add(say.alone());
            }
        }
        return new DecisionView(lines, say.decided_by(text.staff(kept.decidedBy()), text.moment(kept.decidedAt())));
    }

    private List<String> lines(ServiceDecision one) {
        List<String> lines = new ArrayList<>();
        String booked = one.bookedId().map(id -> " (" + say.booked_as(text.service(id)) + ")").orElse("");
        String until = one.until().map(day -> ", " + say.until(text.day(day))).orElse("");
        lines.add(say.decided(text.verdict(one.verdict()), text.service(one.serviceId()) + booked + until));
        if (!one.conditions().isBlank()) {
            lines.add(say.conditions(one.conditions()));
        }
        one.alternative().ifPresent(id -> lines.add(say.alternative(text.service(id))));
        one.against().forEach(a -> lines
            .add(say.against() + ": " + text.words().finding(a.ruleId()).title() + " (" + text.word(a.weight()) + ")"));
        return lines;
    }

    private DoneView done(KeptClosing kept) {
        Closing closing = closings.read(kept);
        return new DoneView(services(closing), closing.used().stream().map(this::product).toList(),
            closing.strandTest().map(said::strandTest).orElse(""), wrong(closing.wrong()),
            closing.wrong().happened(), closing.condition(), closing.notes(),
            closing.correction(), say.done_by(text.staff(kept.closedBy())) + ", " + text.moment(kept.closedAt()));
    }

    private List<String> services(Closing closing) {
        List<String> services = new ArrayList<>();
        closing.courses().keySet().stream().sorted()
            .forEach(id -> services.add(text.service(id) + ": " + said.course(closing.courses().get(id))));
        closing.done().stream().filter(done -> !closing.courses().containsKey(done.serviceId()))
            .forEach(done -> services.add(text.service(done.serviceId())));
        return services.isEmpty() ? List.of(said.course(Course.NOT_DONE)) : services;
    }

    private List<String> wrong(Closing.Wrong wrong) {
        if (!wrong.happened()) {
            return wrong.said() == Closing.Wrong.Said.NOT_ASKED ? List.of() : List.of(closing.wrong_nothing());
        }
        String kinds = wrong.kinds().stream().map(said::kind).collect(Collectors.joining(", "));
        return Stream
            .of(closing.wrong_text(kinds) + "." + wrong.when().map(when -> " " + said.when(when) + ".").orElse(""),
                wrong.words(), wrong.helped())
            .filter(line -> !line.isBlank()).toList();
    }

    private String product(Closing.Used used) {
        Closing.Planned plan = used.planned();
        Stream<String> parts =
            Stream.of(used.zone().map(said::zone).orElse(""), used.product() + planned(used.product(), plan.product()),
                used.shade().isBlank() ? "" : say.shade(used.shade()) + planned(used.shade(), plan.shade()),
                used.batch().isBlank() ? "" : say.batch(used.batch()),
                used.ratio(), used.grams().isBlank() ? "" : used.grams() + " g",
                used.strength() + planned(used.strength(), plan.strength()),
                used.minutes().isBlank() ? "" : say.minutes(used.minutes()) + planned(used.minutes(), plan.minutes()));
        return parts.filter(part -> !part.isBlank()).collect(Collectors.joining(", "));
    }

    private String planned(String used, String plan) {
        return ClosingSaid.differs(used, plan) ? " (" + closing.planned(plan) + ")" : "";
    }
}
