package foretress.consent;

import foretress.vault.SealedRow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
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

    static boolean isKept(UUID consentId, String language) {
        return count("consentId = ?1 and language = ?2", consentId, language) > 0;
    }

    static Optional<ConsentCopy> of(UUID consentId, String language) {
        return find("consentId = ?1 and language = ?2", consentId, language).firstResultOptional();
    }
}
