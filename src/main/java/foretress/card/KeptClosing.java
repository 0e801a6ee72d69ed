package foretress.card;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** The end of a visit: what was done and used. Written once. */
@Entity
@Immutable
@Table(name = "closing")
public class KeptClosing extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    public UUID clientId;
    UUID submission;
    @Column(name = "closed_at")
    public Instant closedAt;
    @Column(name = "closed_by")
    public UUID closedBy;
    @Column(columnDefinition = "text")
    String body;

    String place() {
        return "closing.body." + id;
    }

    /** Every closing of that time, the newest first. */
    static List<KeptClosing> between(Instant from, Instant until) {
        return list("closedAt >= ?1 and closedAt < ?2 order by closedAt desc, id", from, until);
    }

    static Optional<KeptClosing> ofVisit(UUID visitId) {
        return find("visitId", visitId).firstResultOptional();
    }
}
