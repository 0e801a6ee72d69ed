package foretress.intake;

import foretress.vault.SealedRow;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** What weighed at a visit still to come before consent to another one was taken back. It never changes. */
@Entity
@Immutable
@Table(name = "stood_before")
class StoodBefore extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "taken_back_at") private Instant takenBackAt;

    protected StoodBefore() {}

    StoodBefore(Visit visit, Instant takenBackAt, UnaryOperator<String> seal) {
        super(visit.client.id, seal, takenBackAt);
        this.visitId = visit.id;
        this.takenBackAt = takenBackAt;
    }

    static List<StoodBefore> of(Visit visit) {
        return OnFile.of(visit.client.id, "stood_before", visit.id,
            () -> list("visitId = ?1 order by takenBackAt", visit.id));
    }

    Instant takenBackAt() {
        return takenBackAt;
    }
}
