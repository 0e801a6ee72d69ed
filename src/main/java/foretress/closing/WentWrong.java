package foretress.closing;

import foretress.assessment.Assessment;
import foretress.assessment.ComputedAs;
import foretress.assessment.Finding;
import foretress.intake.Assessments;
import foretress.intake.BookedChemistry;
import foretress.intake.ChairRecord;
import foretress.intake.EarlierFindings.Earlier;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What staff saw go wrong at earlier visits, as findings of a visit to come: the same that the client's own telling of it would make, with
 * everything else answered at its best. Tests and doctors' words of the coming visit lift them as they lift the client's.
 */
@ApplicationScoped
class WentWrong implements ChairRecord {
    private final Visits visits;
    private final Closings closings;
    private final Assessments assessments;
    private final BookedChemistry chemistry;
    private final Knowledge knowledge;

    WentWrong(Visits visits, Closings closings, Assessments assessments, BookedChemistry chemistry,
        Knowledge knowledge) {
        this.visits = visits;
        this.closings = closings;
        this.assessments = assessments;
        this.chemistry = chemistry;
        this.knowledge = knowledge;
    }

    @Override
    public List<Earlier> wentWrong(Visit coming) {
        List<Earlier> saw = new ArrayList<>();
        List<Visit> closed = visits.of(coming.client.id).stream()
            .filter(other -> !other.id.equals(coming.id) && closings.of(other.id).isPresent()).toList();
        Optional<Visit> newest = closed.stream().filter(other -> other.startsAt.isBefore(coming.startsAt))
            .reduce((a, b) -> a.startsAt.isAfter(b.startsAt) ? a : b);
        for (Visit other : closed) {
            findings(coming, other, newest.filter(other::equals).isPresent())
                .forEach(finding -> saw.add(new Earlier(finding, other)));
        }
        return saw;
    }

    private Stream<Finding> findings(Visit coming, Visit other, boolean newest) {
        Closing closing = closings.of(other.id).map(closings::read).orElseThrow();
        if (!closing.wrong().happened()) {
            return Stream.empty();
        }
        LocalDate day = other.startsThere().toLocalDate();
        Stream<Finding> reactions = new SeenHere(knowledge.questionnaire(), knowledge.ruleSet())
            .reactions(closing, day, coming.startsThere().toLocalDate()).stream()
            .flatMap(told -> from(coming, told, told.byQuestion().keySet()));
        Stream<Finding> broke = SeenHere.breakage(closing).filter(told -> newest).stream()
            .flatMap(told -> from(coming, told, told.byQuestion().keySet()));
        Stream<Finding> heat = SeenHere.heat(closing, day).stream()
            .flatMap(told -> from(coming, told, told.byQuestion().keySet())).filter(this::ofMetal);
        return Stream.of(reactions, broke, heat).flatMap(one -> one);
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
