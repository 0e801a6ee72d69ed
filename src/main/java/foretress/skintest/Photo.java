package foretress.skintest;

import foretress.vault.SealedRow;
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
class Photo extends SealedRow {
    @Column(name = "entry_id") private UUID entryId;
    @Column(name = "made_at") private Instant madeAt;

    protected Photo() {}

    Photo(SkinTestEntry entry, Instant now, UnaryOperator<String> seal) {
        super(entry.clientId(), seal, now);
        this.entryId = entry.id();
        this.madeAt = now;
    }

    static List<Photo> ofEntry(UUID entryId) {
        return list("entryId = ?1 order by madeAt, id", entryId);
    }
}
