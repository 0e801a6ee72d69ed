package foretress.skintest;

import foretress.running.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;
import java.util.UUID;

/** Which product and shade a signed consent to a skin test is for. It serves one test. */
@Entity(name = "SkinTestAgreed")
@Table(name = "skin_test_agreed")
class TestAgreement extends PanacheEntityBase {
    @Id
    @Column(name = "consent_id") private UUID consentId;
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "line_id") private UUID lineId;
    private String shade;
    @Column(name = "used_by") private UUID usedBy;

    protected TestAgreement() {}

    TestAgreement(UUID consentId, UUID visitId, UUID lineId, String shade) {
        Stored.needed(consentId, visitId, lineId, shade);
        this.consentId = consentId;
        this.visitId = visitId;
        this.lineId = lineId;
        this.shade = shade;
    }

    /**
     * Uses it up for that test.
     *
     * @return the consent's id
     * @throws IllegalStateException when it served another
     */
    UUID use(UUID test) {
        if (usedBy != null) {
            throw new IllegalStateException("a consent serves one test");
        }
        usedBy = test;
        return consentId;
    }

    static Optional<TestAgreement> open(UUID visitId, UUID lineId, String shade) {
        return find("visitId = ?1 and lineId = ?2 and shade = ?3 and usedBy is null", visitId, lineId, shade)
            .firstResultOptional();
    }
}
