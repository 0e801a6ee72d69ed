package foretress.vault;

import foretress.running.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** A client's own data key, wrapped by the master key. */
@Entity
@Table(name = "client_key")
class ClientKey extends PanacheEntityBase {
    @Id
    @Column(name = "client_id") private UUID clientId;
    @Column(columnDefinition = "text") String wrapped;
    /** Fingerprint of the master key; none on a key from before there could be two. */
    @Column(name = "wrapped_by") private String wrappedBy;
    @Column(name = "made_at") private Instant madeAt;

    protected ClientKey() {}

    ClientKey(UUID clientId, String wrapped, String wrappedBy, Instant madeAt) {
        Stored.needed(clientId, wrapped, wrappedBy, madeAt);
        this.clientId = clientId;
        this.wrapped = wrapped;
        this.wrappedBy = wrappedBy;
        this.madeAt = madeAt;
    }
}
