package foretress.skintest;

import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A skin test that was put on. */
@Entity
@Table(name = "skin_test")
class TestApplied extends SealedRow {
    private UUID submission;
    @Column(name = "visit_id") private UUID visitId;
    /** The product line as its leaflet was on that day. */
    @Column(name = "line_version") private UUID lineVersion;
    @Column(name = "consent_id") private UUID consentId;
    @Column(name = "applied_at") private Instant appliedAt;
    @Column(name = "applied_by") private UUID appliedBy;
    @Column(name = "readable_from") private Instant readableFrom;
    @Column(name = "reminded_at") private Instant remindedAt;

    protected TestApplied() {}

    /**
     * A test put on now.
     *
     * @param agreed the signed consent it uses up
     * @param wait how long before it may be read, not negative
     * @param seal seals how it was made for the place it is given
     */
    TestApplied(UUID submission, Visit visit, UUID lineVersion, TestAgreement agreed, UUID staff, Instant now,
        Duration wait, UnaryOperator<String> seal) {
        super(visit.client.id, seal, submission, lineVersion, agreed, staff, now);
        if (wait.isNegative()) {
            throw new IllegalArgumentException("read before it was put on: " + wait);
        }
        this.submission = submission;
        this.visitId = visit.id;
        this.lineVersion = lineVersion;
        this.appliedAt = now;
        this.appliedBy = staff;
        this.readableFrom = now.plus(wait);
        this.consentId = agreed.use(id);
    }

    static Optional<TestApplied> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    static Optional<TestApplied> byId(UUID id) {
        return findByIdOptional(id);
    }

    /** The newest first; those of records merged into this one are among them. */
    static List<TestApplied> ofClient(UUID clientId) {
        return OnFile.of(clientId, "skin_test", clientId,
            () -> list("clientId in " + Client.SAME_PERSON + " order by appliedAt desc, id", clientId));
    }

    UUID visitId() {
        return visitId;
    }

    UUID lineVersion() {
        return lineVersion;
    }

    Instant appliedAt() {
        return appliedAt;
    }

    UUID appliedBy() {
        return appliedBy;
    }

    Instant readableFrom() {
        return readableFrom;
    }
}
