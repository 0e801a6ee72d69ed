package foretress.intake;

import foretress.running.Stored;
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
class TestRefusal extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "client_id") private UUID clientId;
    @Column(name = "said_at") private Instant saidAt;
    /** Ids of the tests with spaces between, sealed; none of them when the client wants all after all. */
    @Column(columnDefinition = "text") private String body;

    protected TestRefusal() {}

    TestRefusal(Visit visit, Instant now, UnaryOperator<String> seal) {
        super(visit, now);
        this.visitId = visit.id;
        this.clientId = visit.client.id;
        this.saidAt = now;
        this.body = sealed("body", seal);
    }

    static Optional<TestRefusal> newest(UUID visitId) {
        return find("visitId = ?1 order by saidAt desc", visitId).firstResultOptional();
    }

    UUID clientId() {
        return clientId;
    }

    Instant saidAt() {
        return saidAt;
    }

    String body() {
        return body;
    }
}
