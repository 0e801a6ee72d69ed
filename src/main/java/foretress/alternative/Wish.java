package foretress.alternative;

import foretress.vault.SealedRow;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/**
 * Which other service the client asked for, as said at one moment: its id, sealed, since what is asked for instead tells something of
 * the answers. Never changed: another mind is another row.
 */
@Entity
@Table(name = "service_wish")
class Wish extends SealedRow {
    /** Said instead of a service where the client wants none after all. */
    static final String NONE = "none";

    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "said_at") private Instant saidAt;

    protected Wish() {}

    Wish(Visit visit, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, now);
        this.visitId = visit.id;
        this.saidAt = now;
    }

    static Optional<Wish> newest(Visit visit) {
        return OnFile.<Wish>of(visit.client.id, "service_wish", visit.id,
            () -> find("visitId = ?1 order by saidAt desc", visit.id).range(0, 0).list()).stream().findFirst();
    }

    /** What was ever said at these visits, the newest last. */
    static List<Wish> of(Collection<UUID> visits) {
        return visits.isEmpty() ? List.of() : list("visitId in ?1 order by saidAt", visits);
    }

    UUID visitId() {
        return visitId;
    }

    Instant saidAt() {
        return saidAt;
    }
}
