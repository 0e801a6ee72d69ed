package foretress.skintest;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A photo a client sent with a report: drawn anew, sealed, shown to staff only. */
@Entity(name = "SkinTestPhoto")
@Table(name = "skin_test_photo")
class Photo extends PanacheEntityBase {
    @Id UUID id;
    @Column(name = "entry_id") UUID entryId;
    @Column(name = "client_id") UUID clientId;
    @Column(name = "made_at") Instant madeAt;
    @Column(columnDefinition = "text") String body;

    String place() {
        return "skin_test_photo.body." + id;
    }

    static List<Photo> ofEntry(UUID entryId) {
        return list("entryId = ?1 order by madeAt, id", entryId);
    }
}
