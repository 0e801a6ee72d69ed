package foretress.intake;

import foretress.ledger.Ledger;
import foretress.questionnaire.Answers;
import foretress.running.LoggableFailure;
import foretress.salon.RulesChanged;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Assesses anew what something outside the answers has changed: a test, a measurement, a product. */
@ApplicationScoped
public class Renewal {
    private static final Logger LOG = Logger.getLogger(Renewal.class);

    private final Visits visits;
    private final Intake intake;
    private final Assessments assessments;
    private final Plans plans;
    private final Ledger ledger;

    Renewal(Visits visits, Intake intake, Assessments assessments, Plans plans, Ledger ledger) {
        this.ledger = ledger;
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

    /** What must be done first follows from what the client wants; what their hair and skin are like does not. */
    void anotherMind(@Observes Refusals.Changed changed) {
        Visit visit = Visit.findById(changed.visitId());
        visit.owes(plans.first(visit, intake.said(visit)));
    }

    /** Every visit still to come, in the transaction that changes what holds here: no list shows what an earlier policy came to. */
    void otherRules(@Observes RulesChanged changed) {
        visits.aheadFrom(changed.today(), changed.zone()).forEach(this::againIfItCan);
    }

    /** A visit that nobody can read any more keeps what was kept, and holds up neither the owner nor the others; the owner's trail names it. */
    private void againIfItCan(UUID visitId) {
        try {
            again(visitId);
            // each query looks through all that the session still holds: without this the time grows with the square of the visits
            Visit.getEntityManager().flush();
            Visit.getEntityManager().clear();
        } catch (RuntimeException unreadable) {
            LOG.errorf(LoggableFailure.of(unreadable), "visit %s keeps what it owed under the rules before", visitId);
            ledger.note("server", "visit not assessed anew, it keeps what it owed before", visitId.toString());
        }
    }

    /** An assessment that comes out the same is not made anew: each new one puts a decision in question. */
    private void again(UUID visitId) {
        Visit visit = Visit.findById(visitId, LockModeType.PESSIMISTIC_WRITE);
        Answers said = intake.said(visit);
        if (assessments.outdated(visit, said)) {
            assessments.again(visit, said);
        }
        visit.owes(plans.first(visit, said));
    }

    /** Every visit of the client at which something is still to happen. */
    @Transactional
    public void ofClient(UUID clientId) {
        visits.of(clientId).stream().filter(visit -> visit.state.isAhead()).map(visit -> visit.id).toList()
            .forEach(this::of);
    }
}
