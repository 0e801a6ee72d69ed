package foretress.intake;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Whether the salon may hold this client's health answers for a visit (GDPR Art. 9(2)(a)); the newest word counts. */
@Entity
@Table(name = "health_consent")
class HealthConsent extends PanacheEntityBase {
    static final String GIVEN = "given";
    static final String REFUSED = "refused";

    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    public UUID clientId;
    public String said;
    @Column(name = "said_at")
    public Instant saidAt;
    public String language;
    @Column(name = "notice_version")
    public String noticeVersion;
    @Column(name = "notice_sha256")
    public String noticeSha256;

    static Optional<HealthConsent> newest(UUID visitId) {
        return find("visitId = ?1 order by saidAt desc", visitId).firstResultOptional();
    }

    static boolean given(UUID visitId) {
        return newest(visitId).filter(c -> GIVEN.equals(c.said)).isPresent();
    }
}
