package foretress.decision;

import foretress.running.Stored;
import foretress.visit.Booked;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** A booked service that became another one, or lost a step; what the client agreed to is then no longer what is planned. */
@Entity
@Immutable
@Table(name = "adapted_service")
public class AdaptedService extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    /** Where it stands in the visit, counted from 0. */
    private int place;
    @Column(name = "from_service") private String fromService;
    @Column(name = "from_steps") private String fromSteps;
    @Column(name = "to_service") private String toService;
    @Column(name = "to_steps") private String toSteps;
    @Column(name = "adapted_at") private Instant adaptedAt;
    @Column(name = "adapted_by") private UUID adaptedBy;

    protected AdaptedService() {}

    AdaptedService(UUID visitId, int place, Booked from, Booked to, UUID by, Instant now) {
        super(visitId, from, to, by, now);
        this.visitId = visitId;
        this.place = (int) counted(place);
        this.fromService = from.serviceId();
        this.fromSteps = String.join(" ", from.stepIds());
        this.toService = to.serviceId();
        this.toSteps = String.join(" ", to.stepIds());
        this.adaptedBy = by;
        this.adaptedAt = now;
    }

    public UUID visitId() {
        return visitId;
    }

    public int place() {
        return place;
    }

    public String fromService() {
        return fromService;
    }

    public String toService() {
        return toService;
    }

    public Instant adaptedAt() {
        return adaptedAt;
    }

    public UUID adaptedBy() {
        return adaptedBy;
    }

    public List<String> fromSteps() {
        return List.of(fromSteps.split(" "));
    }

    /** What was first booked in this place; empty when it is planned as booked. */
    public static Optional<AdaptedService> first(UUID visitId, int place) {
        return find("visitId = ?1 and place = ?2 order by adaptedAt", visitId, place).firstResultOptional();
    }

    static boolean anySince(UUID visitId, Instant moment) {
        return count("visitId = ?1 and adaptedAt > ?2", visitId, moment) > 0;
    }
}
