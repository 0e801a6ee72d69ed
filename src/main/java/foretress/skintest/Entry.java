package foretress.skintest;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One look at a test, by the client or by staff. It stays; a slip is marked as entered in error and counts no more. */
@Entity(name = "SkinTestEntry")
@Table(name = "skin_test_entry")
class Entry extends PanacheEntityBase {
    enum Kind { REPORT, READING }

    @Id UUID id;
    UUID submission;
    @Column(name = "test_id") UUID testId;
    @Column(name = "client_id") UUID clientId;
    @Enumerated(EnumType.STRING) @Column(length = 16) Kind kind;
    @Column(name = "made_at") Instant madeAt;
    /** The member of staff; empty for what the client told. */
    @Column(name = "made_by") UUID madeBy;
    @Column(columnDefinition = "text") String body;
    @Column(name = "error_at") Instant errorAt;
    @Column(name = "error_by") UUID errorBy;
    @Column(name = "error_reason", columnDefinition = "text") String errorReason;

    String place() {
        return "skin_test_entry.body." + id;
    }

    String reasonPlace() {
        return "skin_test_entry.error_reason." + id;
    }

    boolean counts() {
        return errorAt == null;
    }

    static Optional<Entry> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    static Optional<Entry> byId(UUID id) {
        return findByIdOptional(id);
    }

    /** In the order in which they were made. */
    static List<Entry> ofTest(UUID testId) {
        return list("testId = ?1 order by madeAt, id", testId);
    }
}
