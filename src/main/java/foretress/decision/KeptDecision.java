package foretress.decision;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** One decision of one named person, kept as it was made; a later one stands above it and changes nothing in it. */
@Entity
@Immutable
@Table(name = "decision")
public class KeptDecision extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    public UUID clientId;
    /** 1 for the visit's first decision. */
    @Column(name = "version_no")
    public int versionNo;
    UUID submission;
    /** The assessment it was made on. */
    @Column(name = "assessment_id")
    public UUID assessmentId;
    /** The signed consent that held; absent when nothing was signed, as when a visit is declined early. */
    @Column(name = "consent_id")
    UUID consentId;
    @Column(name = "decided_at")
    public Instant decidedAt;
    /** A member of staff: nothing else can decide. */
    @Column(name = "decided_by")
    public UUID decidedBy;
    @Column(columnDefinition = "text")
    String body;

    /**
     * What is sealed.
     *
     * @param reason why findings in the way were gone against; blank when none was
     * @param alone one person works here, so nobody else looked at it
     */
    public record Body(List<ServiceDecision> services, String reason, boolean alone) {
        public Body {
            services = List.copyOf(services);
        }
    }

    String place() {
        return "decision.body." + id;
    }

    public Optional<UUID> consentId() {
        return Optional.ofNullable(consentId);
    }

    /** Every decision on these visits, the first in front. */
    public static List<KeptDecision> ofVisits(Collection<UUID> visits) {
        return visits.isEmpty() ? List.of() : list("visitId in ?1 order by versionNo", visits);
    }

    /** Every decision of that time, the newest first. */
    public static List<KeptDecision> between(Instant from, Instant until) {
        return list("decidedAt >= ?1 and decidedAt < ?2 order by decidedAt desc, id", from, until);
    }

    static Optional<KeptDecision> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Newest first. */
    static List<KeptDecision> ofVisit(UUID visitId) {
        return list("visitId = ?1 order by versionNo desc", visitId);
    }
}
