package foretress.demo;

import foretress.closing.AppliedTo;
import foretress.closing.Closing;
import foretress.closing.Closing.Planned;
import foretress.closing.Closing.Used;
import foretress.closing.Closing.Wrong;
import foretress.closing.Closings;
import foretress.closing.Course;
import foretress.closing.StrandTrial;
import foretress.decision.CurrentAssessment;
import foretress.decision.Decisions;
import foretress.decision.Decisions.Choice;
import foretress.decision.Decisions.Wanted;
import foretress.decision.Verdict;
import foretress.intake.Intake;
import foretress.intake.ShelfLife;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.salon.Staff;
import foretress.visit.Booked;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;

/** Takes an invented client's visit to its end, through the same doors that the stylist's pages use. */
@RequestScoped
public class DemoClosed {
    private final Intake intake;
    private final ShelfLife shelfLife;
    private final CurrentAssessment assessed;
    private final Decisions decisions;
    private final Closings closings;

    DemoClosed(Intake intake, ShelfLife shelfLife, CurrentAssessment assessed, Decisions decisions, Closings closings) {
        this.intake = intake;
        this.shelfLife = shelfLife;
        this.assessed = assessed;
        this.decisions = decisions;
        this.closings = closings;
    }

    void close(UUID visitId) {
        Staff petra = QuarkusTransaction.requiringNew().call(() -> Staff.byLogin("petra").orElseThrow());
        QuarkusTransaction.requiringNew().run(() -> askAgain(Visit.findById(visitId)));
        UUID assessment = QuarkusTransaction.requiringNew().call(() -> assessed.now(Visit.findById(visitId)).id());
        var choice =
            new Choice(Verdict.PROCEED_WITH_CHANGES, Optional.empty(), "Lukewarm water only; off after 20 minutes.",
                Optional.empty());
        decisions.record(visitId, petra,
            new Wanted(UUID.randomUUID(), assessment, 0, List.of(choice), Optional.empty()));
        List<Booked> planned = QuarkusTransaction.requiringNew().call(() -> Decisions.planned(Visit.findById(visitId)));
        var used =
            new Used(Optional.of(AppliedTo.WHOLE), "Fernholm hair mask", "M-204", "", "", "", "", "20",
                Planned.NOTHING);
        closings.keep(visitId, petra, UUID.randomUUID(), 0,
            new Closing(planned,
                planned.stream().collect(Collectors.toMap(Booked::serviceId, one -> Course.AS_PLANNED)),
                List.of(used), Optional.of(StrandTrial.GOOD), Wrong.NOTHING, "Soft, no itch.",
                "Liked it; wants a colour before summer.", ""));
    }

    /** What has a shelf life is put once more, and nothing changed. */
    private void askAgain(Visit visit) {
        Answers said = intake.said(visit);
        List<Question> due = shelfLife.due(visit, said);
        intake.topics(visit, said).stream().filter(topic -> topic.questions().stream().anyMatch(due::contains))
            .forEach(topic -> intake.record(visit.id, topic, said, visit.client.language));
    }
}
