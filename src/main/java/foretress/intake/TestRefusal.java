package foretress.intake;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Which tests the client does not want for a visit, as said at one moment. Never changed: another mind is another row. */
@Entity
@Table(name = "test_refusal")
class TestRefusal extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    public UUID clientId;
    @Column(name = "said_at")
    public Instant saidAt;
    /** Ids of the tests with spaces between, sealed; none of them when the client wants all after all. */
    @Column(columnDefinition = "text")
    public String body;

    /** Where the sealed body belongs. */
    String place() {
        return "test_refusal.body." + id;
    }

    static Optional<TestRefusal> newest(UUID visitId) {
        return find("visitId = ?1 order by saidAt desc", visitId).firstResultOptional();
    }
}
