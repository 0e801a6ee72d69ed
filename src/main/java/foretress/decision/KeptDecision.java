package foretress.decision;

import foretress.running.Asked;
import foretress.vault.SealedRow;
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
import org.hibernate.annotations.Immutable;

/** One decision of one named person, kept as it was made; a later one stands above it and changes nothing in it. */
@Entity
@Immutable
@Table(name = "decision")
public class KeptDecision extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "version_no") private int versionNo;
    private UUID submission;
    @Column(name = "assessment_id") private UUID assessmentId;
    @Column(name = "consent_id") private UUID consentId;
    @Column(name = "decided_at") private Instant decidedAt;
    @Column(name = "decided_by") private UUID decidedBy;

    protected KeptDecision() {}

    /**
     * The next decision of a visit.
     *
     * @param consent the signed consent that held
     * @param by a member of staff: nothing else can decide
     * @param seal seals the body for the place it is given
     */
    KeptDecision(Visit visit, Decisions.Wanted wanted, Optional<UUID> consent, UUID by, Instant now,
        UnaryOperator<String> seal) {
        super(visit.client.id, seal, wanted, by, now);
        this.visitId = visit.id;
        this.versionNo = wanted.decided() + 1;
        this.submission = wanted.submission();
        this.assessmentId = wanted.assessmentId();
        this.consentId = consent.orElse(null);
        this.decidedBy = by;
        this.decidedAt = now;
    }

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

    public UUID visitId() {
        return visitId;
    }

    /** 1 for the visit's first decision. */
    public int versionNo() {
        return versionNo;
    }

    /** The assessment it was made on. */
    public UUID assessmentId() {
        return assessmentId;
    }

    public Instant decidedAt() {
        return decidedAt;
    }

    public UUID decidedBy() {
        return decidedBy;
    }

    /** The signed consent that held; absent when nothing was signed, as when a visit is declined early. */
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
        return Asked.once(question(visitId), () -> list("visitId = ?1 order by versionNo desc", visitId));
    }

    /** Has every one of each of these visits at hand. */
    static void ready(Collection<UUID> visits) {
        Asked.together(visits, KeptDecision::question, KeptDecision::visitId,
            these -> KeptDecision.<KeptDecision>list("visitId in ?1 order by versionNo desc", these));
    }

    private static Object question(UUID visitId) {
        return List.of(KeptDecision.class, visitId);
    }
}
