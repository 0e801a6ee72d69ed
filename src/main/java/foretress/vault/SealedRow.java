package foretress.vault;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.MappedSuperclass;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A row about one client whose body is sealed with that client's key, and opens nowhere else: {@link Vault#open}. */
@MappedSuperclass
public abstract class SealedRow extends Stored {
    @Column(name = "client_id") private UUID clientId;
    @Column(columnDefinition = "text") private String body;

    /** For the mapping alone, which fills it. */
    protected SealedRow() {}

    /** @param needed what else it cannot be without */
    protected SealedRow(UUID clientId, UnaryOperator<String> seal, Object... needed) {
        super(needed);
        needed(clientId);
        this.clientId = clientId;
        seal(seal);
    }

    /** From here on this is its body. */
    protected final void seal(UnaryOperator<String> seal) {
        this.body = sealed("body", seal);
    }

    /** Whose key seals it; records of one person that became one keep theirs. */
    public UUID clientId() {
        return clientId;
    }

    public String body() {
        return body;
    }
}
