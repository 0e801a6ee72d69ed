package foretress.closing;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A photo of the hair, kept with the client's leave: drawn anew and sealed. */
@Entity
@Table(name = "hair_photo")
public class HairPhoto extends PanacheEntityBase {
    public enum Moment { BEFORE, AFTER }

    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    UUID clientId;
    @Enumerated(EnumType.STRING)
    public Moment moment;
    @Column(name = "taken_at")
    public Instant takenAt;
    @Column(name = "taken_by")
    UUID takenBy;
    @Column(columnDefinition = "text")
    String body;

    String place() {
        return "hair_photo.body." + id;
    }

    static List<HairPhoto> of(UUID visitId) {
        return list("visitId = ?1 order by moment desc, takenAt, id", visitId);
    }
}
