package foretress.rights;

import foretress.vault.SealedRow;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** That consent was taken back once the visit was over, with the words that were confirmed; it never changes. */
@Entity
@Immutable
@Table(name = "withdrawal")
class Withdrawal extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "taken_back_at") private Instant takenBackAt;
    private String language;

    protected Withdrawal() {}

    Withdrawal(Visit visit, String language, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, language, now);
        this.visitId = visit.id;
        this.language = language;
        this.takenBackAt = now;
    }

    static Optional<Withdrawal> ofVisit(UUID visitId) {
        return find("visitId", visitId).firstResultOptional();
    }

    UUID visitId() {
        return visitId;
    }

    Instant takenBackAt() {
        return takenBackAt;
    }
}
