package foretress.card;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.TestFact;
import foretress.closing.Closings;
import foretress.closing.DoneHere;
import foretress.intake.ChairRecord;
import foretress.intake.EarlierFindings;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.SaidTreatment;
import foretress.visit.State;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** What the record card tells an assessment of a later visit: what was done here, and what was found and still stands. */
@Singleton
public class CardHistory implements ChairRecord {
    private final Visits visits;
    private final Closings closings;
    private final EarlierFindings earlier;
    private final Knowledge knowledge;

    CardHistory(Visits visits, Closings closings, EarlierFindings earlier, Knowledge knowledge) {
        this.visits = visits;
        this.closings = closings;
        this.earlier = earlier;
        this.knowledge = knowledge;
    }

    /** Tests are kept by the rooms that make them. */
    @Override
    public List<TestFact> tests(Visit visit) {
        return List.of();
    }

    /** Newest first. */
    @Override
    public List<SaidTreatment> treatments(Visit visit) {
        return visits.of(visit.client.id).stream().filter(other -> !other.id.equals(visit.id)).flatMap(this::done)
            .toList();
    }

    /** Everything done to this client's hair here, newest first. */
    List<SaidTreatment> all(UUID clientId) {
        return visits.of(clientId).stream().flatMap(this::done).toList();
    }

    private Stream<SaidTreatment> done(Visit visit) {
        return Stream
            .ofNullable(closings.ofClient(visit.client.id).get(visit.id)).filter(any -> visit.state != State.WITHDRAWN)
            .flatMap(
                kept -> closings.read(kept).done().stream()
                    .flatMap(done -> DoneHere
                        .of(done, kept.closedAt().atZone(visit.zone()).toLocalDate(), knowledge.ruleSet())
                        .stream()));
    }

    @Override
    public List<Finding> earlier(Visit visit, Assessment now) {
        return earlier.of(visit, now).stream().map(EarlierFindings.Earlier::finding).toList();
    }
}
