package foretress.skintest;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A photo a client sent with a report: drawn anew, sealed, shown to staff only. */
@Entity(name = "SkinTestPhoto")
@Table(name = "skin_test_photo")
class Photo extends Stored {
    @Column(name = "entry_id") private UUID entryId;
    @Column(name = "client_id") private UUID clientId;
    @Column(name = "made_at") private Instant madeAt;
    @Column(columnDefinition = "text") private String body;

    protected Photo() {}

    Photo(SkinTestEntry entry, Instant now, UnaryOperator<String> seal) {
        super(entry, now);
        this.entryId = entry.id();
        this.clientId = entry.clientId();
        this.madeAt = now;
        this.body = sealed("body", seal);
    }

    static List<Photo> ofEntry(UUID entryId) {
        return list("entryId = ?1 order by madeAt, id", entryId);
    }

    UUID clientId() {
        return clientId;
    }

    String body() {
        return body;
    }
}
