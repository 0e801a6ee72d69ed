package foretress.visit;

import foretress.vault.SealedRow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.hibernate.annotations.Immutable;

/** What stood on file of a client until it was corrected; it never changes. */
@Entity
@Immutable
@Table(name = "client_before")
class ClientBefore extends SealedRow {
    @Column(name = "until_at") private Instant untilAt;
    /** A staff id. */
    @Column(name = "changed_by") private String changedBy;

    protected ClientBefore() {}

    ClientBefore(UUID clientId, String changedBy, Instant now, UnaryOperator<String> seal) {
        super(clientId, seal, changedBy, now);
        this.untilAt = now;
        this.changedBy = changedBy;
    }

    /** The newest first. */
    static List<ClientBefore> of(UUID clientId) {
        return list("clientId = ?1 order by untilAt desc, id", clientId);
    }

    Instant untilAt() {
        return untilAt;
    }

    String changedBy() {
        return changedBy;
    }
}
