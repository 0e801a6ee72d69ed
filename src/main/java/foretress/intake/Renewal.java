package foretress.intake;

import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.util.UUID;

/** Assesses anew what something outside the answers has changed: a test, a measurement, a product. */
@ApplicationScoped
public class Renewal {
    private final Visits visits;
    private final Intake intake;
    private final Assessments assessments;
    private final Plans plans;

    Renewal(Visits visits, Intake intake, Assessments assessments, Plans plans) {
        this.visits = visits;
        this.intake = intake;
        this.assessments = assessments;
        this.plans = plans;
    }

    /** The visit's standing and what it owes, at once. Without answers it has no standing, and owes what it owes at least. */
    @Transactional
    public void of(UUID visitId) {
        Visit visit = Visit.findById(visitId);
        Answers said = intake.said(visit);
        if (!said.byQuestion().isEmpty()) {
            assessments.renew(visit, said);
        }
        visit.owes(plans.first(visit, said));
    }

    /** What a new visit owes at least, before anybody has answered. */
    void booked(@Observes Visits.Made made) {
        of(made.visitId());
    }

    /** Every visit of the client at which something is still to happen. */
    @Transactional
    public void ofClient(UUID clientId) {
        visits.of(clientId).stream().filter(visit -> visit.state.isAhead()).map(visit -> visit.id).toList().forEach(this::of);
    }
}
