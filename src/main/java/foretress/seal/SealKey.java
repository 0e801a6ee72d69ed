package foretress.seal;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import org.hibernate.annotations.Immutable;

/** A sealing key of the salon as it is kept; the newest seals, and by the certificates of all what was sealed ever can be checked. */
@Entity
@Immutable
@Table(name = "seal_key")
class SealKey extends Stored {
    @Column(name = "made_at") private Instant madeAt;
    @Column(columnDefinition = "text") private String certificate;
    @Column(columnDefinition = "text") private String keystore;

    protected SealKey() {}

    /**
     * @param certificate X.509, DER in base64
     * @param keystore PKCS#12 in base64
     */
    SealKey(Instant madeAt, String certificate, String keystore) {
        super(madeAt, certificate, keystore);
        this.madeAt = madeAt;
        this.certificate = certificate;
        this.keystore = keystore;
    }

    static List<SealKey> newestFirst() {
        return list("order by madeAt desc, id");
    }

    String certificate() {
        return certificate;
    }

    String keystore() {
        return keystore;
    }
}
