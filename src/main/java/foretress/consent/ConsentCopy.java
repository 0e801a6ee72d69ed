package foretress.consent;

import foretress.vault.SealedRow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** What was signed, in a language that staff read: made when it was signed, of the same answers, and signed by nobody. */
@Entity
@Immutable
@Table(name = "consent_copy")
class ConsentCopy extends SealedRow {
    @Column(name = "consent_id") private UUID consentId;
    private String language;

    protected ConsentCopy() {}

    ConsentCopy(UUID clientId, UUID consentId, String language, UnaryOperator<String> seal) {
        super(clientId, seal, consentId, language);
        this.consentId = consentId;
        this.language = language;
    }

    /** Those of these consents of which there is one in this language. */
    static List<UUID> kept(Collection<UUID> consents, String language) {
        return consents.isEmpty() ? List.of() : getEntityManager().createQuery(
            "select c.consentId from ConsentCopy c where c.consentId in ?1 and c.language = ?2", UUID.class)
            .setParameter(1, consents).setParameter(2, language).getResultList();
    }

    static Optional<ConsentCopy> of(UUID consentId, String language) {
        return find("consentId = ?1 and language = ?2", consentId, language).firstResultOptional();
    }
}
