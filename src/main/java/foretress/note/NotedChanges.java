package foretress.note;

import foretress.assessment.Situation;
import foretress.bench.BenchChange;
import foretress.bench.BenchChanges;
import foretress.intake.Assessments;
import foretress.intake.Intake;
import foretress.questionnaire.Answers;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;

/** Which services stand otherwise because of one note: everything is assessed with it and without it. */
@RequestScoped
class NotedChanges {
    private final Intake intake;
    private final Assessments assessments;
    private final NotedFacts facts;
    private final BenchChanges changes;

    NotedChanges(Intake intake, Assessments assessments, NotedFacts facts, BenchChanges changes) {
        this.intake = intake;
        this.assessments = assessments;
        this.facts = facts;
        this.changes = changes;
    }

    /** In the order in which the services are looked at; empty for what was struck out, and while the client has said nothing. */
    List<BenchChange> of(Visit visit, Noted note) {
        Answers said = intake.said(visit);
        if (said.byQuestion().isEmpty() || note.struck()) {
            return List.of();
        }
        Situation with = assessments.situation(visit, said);
        return changes.between(visit, facts.without(visit, note, with), with);
    }
}
