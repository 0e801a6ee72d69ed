package foretress.closing;

import foretress.assessment.Assessment;
import foretress.assessment.ComputedAs;
import foretress.assessment.Finding;
import foretress.assessment.Step;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.ChairRecord;
import foretress.intake.EarlierFindings.Earlier;
import foretress.intake.NoticeConsent;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.told.Felt;
import foretress.told.Reactions;
import foretress.told.Telling;
import foretress.told.ToldReaction;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * What staff saw go wrong at earlier visits, and reactions that the client told of by her link, as findings of a visit to come: the same that the client's own telling of it would make, with
 * everything else answered at its best. Tests and doctors' words of the coming visit lift them as they lift the client's.
 */
@ApplicationScoped
class WentWrong implements ChairRecord {
    private final Visits visits;
    private final Closings closings;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Reactions reactions;
    private final NoticeConsent notices;
    private final Knowledge knowledge;

    WentWrong(Visits visits, Closings closings, Assessments assessments, BookedChemistry chemistry,
        Reactions reactions, NoticeConsent notices, Knowledge knowledge) {
        this.notices = notices;
        this.reactions = reactions;
        this.visits = visits;
        this.closings = closings;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
    }

    @Override
    public List<Earlier> wentWrong(Visit coming) {
        List<Earlier> saw = new ArrayList<>();
        Map<UUID, KeptClosing> kept = closings.ofClient(coming.client.id);
        List<Visit> closed = visits.of(coming.client.id).stream()
            .filter(other -> !other.id.equals(coming.id) && kept.containsKey(other.id)
                && other.state != State.WITHDRAWN)
            .toList();
        Optional<Visit> newest = closed.stream().filter(other -> other.startsAt.isBefore(coming.startsAt))
            .reduce((a, b) -> a.startsAt.isAfter(b.startsAt) ? a : b);
        for (Visit other : closed) {
            findings(coming, other, closings.read(kept.get(other.id)), newest.filter(other::equals).isPresent())
                .forEach(finding -> saw.add(new Earlier(finding, other)));
        }
        reactions.of(coming.client.id).stream().filter(told -> !told.struck() && !takenBack(told)).forEach(told -> {
            Visit by = Visit.findById(told.visitId());
            findings(coming, by, told).forEach(finding -> saw.add(new Earlier(finding, by)));
        });
        return saw;
    }

    /** What she tells after she took consent back she tells anew. */
    private boolean takenBack(ToldReaction told) {
        return Visit.isTakenBack(told.visitId())
            && notices.takenBack(told.visitId()).filter(told.toldAt()::isBefore).isPresent();
    }

    /** What the client told by the link of a visit: to what was done there; where nothing was that reacts, to whatever may be used. */
    private Stream<Finding> findings(Visit coming, Visit by, ToldReaction told) {
        Telling telling = reactions.read(told);
        LocalDate day = (by.state == State.CLOSED ? by.startsAt : told.toldAt()).atZone(by.zone()).toLocalDate();
        return seenHere().reactions(causes(coming, by), telling.felt().stream().map(Felt::code).toList(),
            telling.began(), day, coming.startsThere().toLocalDate()).stream()
            .flatMap(answers -> from(coming, answers, answers.byQuestion().keySet()));
    }

    private List<Step> causes(Visit coming, Visit by) {
        List<Step> done = Optional.ofNullable(closings.ofClient(coming.client.id).get(by.id)).map(closings::read)
            .map(seenHere()::steps).orElse(List.of());
        return Stream.of(done, steps(by), steps(coming))
            .filter(steps -> steps.stream().anyMatch(step -> step.afterwards().reaction().isPresent())).findFirst()
            .orElse(List.of());
    }

    private List<Step> steps(Visit visit) {
        return chemistry.services(visit).stream().flatMap(service -> service.steps().stream()).toList();
    }

    private SeenHere seenHere() {
        return new SeenHere(knowledge.questionnaire(), knowledge.ruleSet());
    }

    private Stream<Finding> findings(Visit coming, Visit other, Closing closing, boolean newest) {
        if (!closing.wrong().happened()) {
            return Stream.empty();
        }
        LocalDate day = other.startsThere().toLocalDate();
        Stream<Finding> reacted = seenHere()
            .reactions(closing, day, coming.startsThere().toLocalDate()).stream()
            .flatMap(told -> from(coming, told, told.byQuestion().keySet()));
        Stream<Finding> broke = SeenHere.breakage(closing).filter(told -> newest).stream()
            .flatMap(told -> from(coming, told, told.byQuestion().keySet()));
        Stream<Finding> heat = SeenHere.heat(closing, day).stream()
            .flatMap(told -> from(coming, told, told.byQuestion().keySet())).filter(this::ofMetal);
        return Stream.of(reacted, broke, heat).flatMap(one -> one);
    }

    private Stream<Finding> from(Visit coming, Answers told, Set<String> questions) {
        Assessment seen = assessments.of(coming, knowledge.answeredWell(told, chemistry.of(coming)));
        return seen.findings().stream().filter(finding -> finding.causes().stream().anyMatch(questions::contains));
    }

    private boolean ofMetal(Finding finding) {
        return finding.facts().stream().flatMap(id -> knowledge.ruleSet().fact(id).stream())
            .anyMatch(def -> def.isComputedAs(ComputedAs.METAL));
    }
}
