package foretress.skintest;

import foretress.visit.Client;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A skin test that was put on. */
@Entity
@Table(name = "skin_test")
class SkinTest extends PanacheEntityBase {
    @Id UUID id;
    UUID submission;
    @Column(name = "client_id") UUID clientId;
    @Column(name = "visit_id") UUID visitId;
    /** The product line as its leaflet was on that day. */
    @Column(name = "line_version") UUID lineVersion;
    @Column(name = "consent_id") UUID consentId;
    @Column(name = "applied_at") Instant appliedAt;
    @Column(name = "applied_by") UUID appliedBy;
    @Column(name = "readable_from") Instant readableFrom;
    @Column(name = "reminded_at") Instant remindedAt;
    @Column(columnDefinition = "text") String body;

    String place() {
        return "skin_test.body." + id;
    }

    static Optional<SkinTest> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    static Optional<SkinTest> byId(UUID id) {
        return findByIdOptional(id);
    }

    /** The newest first; those of records merged into this one are among them. */
    static List<SkinTest> ofClient(UUID clientId) {
        return list("clientId in " + Client.SAME_PERSON + " order by appliedAt desc, id", clientId);
    }
}
