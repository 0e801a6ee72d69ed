package foretress.decision;

import foretress.assessment.Assessment;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.intake.KeptAssessment;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.util.Optional;
import java.util.UUID;

/** The assessment that holds at this moment, kept, so that a decision can name it. */
@Singleton
public class CurrentAssessment {
    private final Assessments assessments;
    private final Intake intake;

    CurrentAssessment(Assessments assessments, Intake intake) {
        this.assessments = assessments;
        this.intake = intake;
    }

    public record Now(UUID id, Assessment assessment, Answers said) {}

    /** The newest kept one; when answers, tests or rules say something else by now, a new one is kept first. */
    @Transactional
    public Now now(Visit visit) {
        Answers said = intake.said(visit);
        Assessment assessment = assessments.of(visit, said);
        Optional<KeptAssessment> newest =
            KeptAssessment.newest(visit.id).filter(kept -> says(kept, visit, assessment, said));
        newest.ifPresent(KeptAssessment::hold);
        if (newest.isEmpty()) {
            assessments.renew(visit, said);
        }
        UUID id = newest.or(() -> KeptAssessment.newest(visit.id)).orElseThrow().id();
        return new Now(id, assessment, said);
    }

    private boolean says(KeptAssessment kept, Visit visit, Assessment now, Answers said) {
        Assessment then = assessments.read(kept);
        return assessments.isOf(kept, visit, said) && then.ruleSetHash().equals(now.ruleSetHash())
            && then.findings().equals(now.findings()) && then.standings().equals(now.standings());
    }

    /** An assessment of this visit as it was made; empty when the id is none of its own. */
    public Optional<Assessment> then(Visit visit, UUID id) {
        return KeptAssessment.<KeptAssessment>findByIdOptional(id).filter(kept -> kept.visitId().equals(visit.id))
            .map(assessments::read);
    }
}
