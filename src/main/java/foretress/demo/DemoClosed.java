package foretress.demo;

import foretress.card.Assessed;
import foretress.card.Closing;
import foretress.card.Closing.Used;
import foretress.card.Closings;
import foretress.card.Decisions;
import foretress.card.Decisions.Choice;
import foretress.card.Decisions.Wanted;
import foretress.card.Verdict;
import foretress.salon.Staff;
import foretress.visit.Booked;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Takes an invented client's visit to its end, through the same doors that the stylist's pages use. */
@RequestScoped
public class DemoClosed {
    private final Assessed assessed;
    private final Decisions decisions;
    private final Closings closings;

    DemoClosed(Assessed assessed, Decisions decisions, Closings closings) {
        this.assessed = assessed;
        this.decisions = decisions;
        this.closings = closings;
    }

    void close(UUID visitId) {
        Staff petra = QuarkusTransaction.requiringNew().call(() -> Staff.byLogin("petra").orElseThrow());
        UUID assessment = QuarkusTransaction.requiringNew().call(() -> assessed.now(Visit.findById(visitId)).id());
        var choice = new Choice(Verdict.PROCEED_WITH_CHANGES, Optional.empty(), "A strand first; off after 45 minutes.", Optional.empty());
        decisions.record(visitId, petra, new Wanted(UUID.randomUUID(), assessment, List.of(choice), Optional.empty()));
        List<Booked> planned = QuarkusTransaction.requiringNew().call(() -> Decisions.planned(Visit.findById(visitId)));
        closings.close(visitId, petra, UUID.randomUUID(), new Closing(planned, List.of(new Used("Fernholm plant colour", "chestnut", "P-204", "", "45")),
            "good", "Even, warm, no itch.", "Liked it; wants it lighter before summer."));
    }
}
