package foretress.intake;

import foretress.vault.SealedRow;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** Which tests the client does not want for a visit, as said at one moment. Never changed: another mind is another row. */
@Entity
@Table(name = "test_refusal")
class TestRefusal extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "said_at") private Instant saidAt;
    /** Ids of the tests with spaces between, sealed; none of them when the client wants all after all. */

    protected TestRefusal() {}

    TestRefusal(Visit visit, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, now);
        this.visitId = visit.id;
        this.saidAt = now;
    }

    static Optional<TestRefusal> newest(Visit visit) {
        return OnFile.<TestRefusal>of(visit.client.id, "test_refusal", visit.id,
            () -> find("visitId = ?1 order by saidAt desc", visit.id).range(0, 0).list()).stream().findFirst();
    }

    Instant saidAt() {
        return saidAt;
    }
}
