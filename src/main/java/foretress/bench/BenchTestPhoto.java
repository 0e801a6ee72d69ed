package foretress.bench;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** A photo of a test, drawn anew and sealed. */
@Entity
@Table(name = "bench_photo")
public class BenchTestPhoto extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "test_id")
    UUID testId;
    @Column(name = "client_id")
    public UUID clientId;
    @Column(name = "taken_at")
    public Instant takenAt;
    @Column(name = "taken_by")
    UUID takenBy;
    @Column(name = "media_type")
    public String mediaType;
    @Enumerated(EnumType.STRING)
    public Keeping kept;
    @Column(columnDefinition = "text")
    public String body;

    public String place() {
        return "bench_photo.body." + id;
    }

    public static List<BenchTestPhoto> of(UUID testId) {
        return list("testId = ?1 order by takenAt, id", testId);
    }

    static Optional<BenchTestPhoto> one(UUID testId, UUID id) {
        return find("testId = ?1 and id = ?2", testId, id).firstResultOptional();
    }
}
