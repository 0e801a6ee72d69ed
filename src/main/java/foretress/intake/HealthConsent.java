package foretress.intake;

import foretress.consent.Notice;
import foretress.running.Stored;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** Whether the salon may hold this client's health answers for a visit (GDPR Art. 9(2)(a)); the newest word counts. */
@Entity
@Table(name = "health_consent")
class HealthConsent extends Stored {
    private static final String GIVEN = "given";
    private static final String REFUSED = "refused";

    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "client_id") private UUID clientId;
    private String said;
    @Column(name = "said_at") private Instant saidAt;
    private String language;
    @Column(name = "notice_version") private String noticeVersion;
    @Column(name = "notice_sha256") private String noticeSha256;
    @Column(columnDefinition = "text") private String guardian;

    protected HealthConsent() {}

    /** @param given or else refused */
    HealthConsent(Visit visit, boolean given, Instant now, Notice notice) {
        super(visit, now, notice.language(), notice.version());
        this.visitId = visit.id;
        this.clientId = visit.client.id;
        this.said = given ? GIVEN : REFUSED;
        this.saidAt = now;
        this.language = notice.language();
        this.noticeVersion = notice.version();
        this.noticeSha256 = notice.sha256();
    }

    /** The same yes, for another visit of the same client. */
    HealthConsent forVisit(Visit visit) {
        if (!visit.client.id.equals(clientId) || !isGiven()) {
            throw new IllegalArgumentException("nobody agrees for another client");
        }
        return new HealthConsent(visit, this);
    }

    private HealthConsent(Visit visit, HealthConsent earlier) {
        super(visit, earlier);
        this.visitId = visit.id;
        this.clientId = earlier.clientId;
        this.said = earlier.said;
        this.saidAt = earlier.saidAt;
        this.language = earlier.language;
        this.noticeVersion = earlier.noticeVersion;
        this.noticeSha256 = earlier.noticeSha256;
    }

    static Optional<HealthConsent> newestOf(UUID clientId) {
        return find("clientId = ?1 order by saidAt desc", clientId).firstResultOptional();
    }

    /** Who agreed beside the client, sealed for its place here. */
    void agreedBy(UnaryOperator<String> seal) {
        this.guardian = sealed("guardian", seal);
    }

    Optional<String> guardian() {
        return Optional.ofNullable(guardian);
    }

    UUID clientId() {
        return clientId;
    }

    static Optional<HealthConsent> newest(UUID visitId) {
        return SoFar.of(visitId).said().stream().max(Comparator.comparing(HealthConsent::saidAt));
    }

    static boolean refused(UUID visitId) {
        return newest(visitId).filter(c -> !c.isGiven()).isPresent();
    }

    static boolean given(UUID visitId) {
        return newest(visitId).filter(HealthConsent::isGiven).isPresent();
    }

    boolean isGiven() {
        return said.equals(GIVEN);
    }

    Instant saidAt() {
        return saidAt;
    }

    String noticeVersion() {
        return noticeVersion;
    }

    String noticeSha256() {
        return noticeSha256;
    }
}
