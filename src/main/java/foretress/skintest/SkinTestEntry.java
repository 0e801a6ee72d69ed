package foretress.skintest;

import foretress.vault.SealedRow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** One look at a test, by the client or by staff. It stays; a slip is marked as entered in error and counts no more. */
@Entity(name = "SkinTestEntry")
@Table(name = "skin_test_entry")
class SkinTestEntry extends SealedRow {
    enum Kind { REPORT, READING }

    private UUID submission;
    @Column(name = "test_id") private UUID testId;
    @Enumerated(EnumType.STRING)
    @Column(length = 16) private Kind kind;
    @Column(name = "made_at") private Instant madeAt;
    /** The member of staff; empty for what the client told. */
    @Column(name = "made_by") private UUID madeBy;
    @Column(name = "error_at") private Instant errorAt;
    @Column(name = "error_by") private UUID errorBy;
    @Column(name = "error_reason", columnDefinition = "text") private String errorReason;

    protected SkinTestEntry() {}

    /** @param staff who read it; empty for what the client told */
    SkinTestEntry(UUID submission, TestApplied test, Optional<UUID> staff, Instant now, UnaryOperator<String> seal) {
        super(test.clientId(), seal, submission, now);
        this.submission = submission;
        this.testId = test.id();
        this.kind = staff.isPresent() ? Kind.READING : Kind.REPORT;
        this.madeAt = now;
        this.madeBy = staff.orElse(null);
    }

    /** A slip of the finger: from here on it counts no more. */
    void wasInError(UUID owner, Instant now, UnaryOperator<String> seal) {
        this.errorAt = now;
        this.errorBy = owner;
        this.errorReason = sealed("error_reason", seal);
    }

    boolean counts() {
        return errorAt == null;
    }

    static Optional<SkinTestEntry> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    static Optional<SkinTestEntry> byId(UUID id) {
        return findByIdOptional(id);
    }

    /** In the order in which they were made. */
    static List<SkinTestEntry> ofTest(UUID testId) {
        return list("testId = ?1 order by madeAt, id", testId);
    }

    UUID testId() {
        return testId;
    }

    Kind kind() {
        return kind;
    }

    Instant madeAt() {
        return madeAt;
    }

    UUID madeBy() {
        return madeBy;
    }

    Instant errorAt() {
        return errorAt;
    }

    UUID errorBy() {
        return errorBy;
    }

    String errorReason() {
        return errorReason;
    }
}
