package foretress.consent;

import foretress.vault.SealedRow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** The salon's seal on a signed document: the bytes that stand behind the document's own in what is given out. */
@Entity
@Immutable
@Table(name = "sealed_paper")
class SealedPaper extends SealedRow {
    @Column(name = "document_id") private UUID documentId;
    @Column(name = "sealed_at") private Instant sealedAt;

    protected SealedPaper() {}

    SealedPaper(UUID clientId, UUID documentId, Instant sealedAt, UnaryOperator<String> seal) {
        super(clientId, seal, documentId, sealedAt);
        this.documentId = documentId;
        this.sealedAt = sealedAt;
    }

    static Optional<SealedPaper> of(UUID documentId) {
        return find("documentId", documentId).firstResultOptional();
    }

    /** Signed documents of which there is none yet, oldest first. */
    static List<UUID> missing() {
        return getEntityManager().createQuery("select c.id from SignedConsent c where not exists "
            + "(select 1 from SealedPaper p where p.documentId = c.id) order by c.signedAt", UUID.class)
            .getResultList();
    }
}
