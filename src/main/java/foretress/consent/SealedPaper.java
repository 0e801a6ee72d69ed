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

/** The salon's seal on a signed document: the bytes that stand behind the document's own in what is given out. They never change. */
@Entity
@Table(name = "sealed_paper")
class SealedPaper extends SealedRow {
    @Column(name = "document_id") private UUID documentId;
    @Column(name = "sealed_at") private Instant sealedAt;
    /** Of the whole file as it is given out. Nobody can try it out: the seal in it is made with the salon's key. */
    @Column(name = "file_sha256") private String fileSha256;

    protected SealedPaper() {}

    SealedPaper(UUID clientId, UUID documentId, Instant sealedAt, String fileSha256, UnaryOperator<String> seal) {
        super(clientId, seal, documentId, sealedAt, fileSha256);
        this.documentId = documentId;
        this.sealedAt = sealedAt;
        this.fileSha256 = fileSha256;
    }

    static Optional<SealedPaper> of(UUID documentId) {
        return find("documentId", documentId).firstResultOptional();
    }

    /** Of which signed document this file is the one given out. */
    static Optional<UUID> documentOf(String fileSha256) {
        return getEntityManager()
            .createQuery("select p.documentId from SealedPaper p where p.fileSha256 = :file", UUID.class)
            .setParameter("file", fileSha256).getResultStream().findFirst();
    }

    /** Documents sealed before files were found again. */
    static List<UUID> unnamed() {
        return getEntityManager()
            .createQuery("select p.documentId from SealedPaper p where p.fileSha256 is null", UUID.class)
            .getResultList();
    }

    /** It can be found by its file from now on. */
    void named(String file) {
        fileSha256 = file;
    }

    /** Signed documents of which there is none yet, oldest first. */
    static List<UUID> missing() {
        return getEntityManager().createQuery("select c.id from SignedConsent c where not exists "
            + "(select 1 from SealedPaper p where p.documentId = c.id) order by c.signedAt", UUID.class)
            .getResultList();
    }
}
