package foretress.bench;

import foretress.picture.RedrawnPhoto;
import foretress.vault.SealedRow;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A photo of a test, drawn anew and sealed. */
@Entity
@Table(name = "bench_photo")
public class BenchPhoto extends SealedRow {
    @Column(name = "test_id") private UUID testId;
    @Column(name = "taken_at") private Instant takenAt;
    @Column(name = "taken_by") private UUID takenBy;
    @Column(name = "media_type") private String mediaType;
    @Enumerated(EnumType.STRING) private Keeping kept;

    protected BenchPhoto() {}

    BenchPhoto(BenchRecord test, UUID by, Instant now, UnaryOperator<String> seal) {
        super(test.clientId(), seal, by, now);
        this.testId = test.id();
        this.takenAt = now;
        this.takenBy = by;
        redrawn(seal);
    }

    /** Takes the place of what was kept as it had been sent. */
    public void redrawn(UnaryOperator<String> seal) {
        seal(seal);
        this.mediaType = RedrawnPhoto.MEDIA_TYPE;
        this.kept = Keeping.REDRAWN;
    }

    /** It stays as it was sent, and is handed out as a file only. */
    public void unreadable() {
        this.kept = Keeping.FILE;
    }

    public static List<BenchPhoto> of(UUID testId) {
        return list("testId = ?1 order by takenAt, id", testId);
    }

    static Optional<BenchPhoto> one(UUID testId, UUID id) {
        return find("testId = ?1 and id = ?2", testId, id).firstResultOptional();
    }

    public Instant takenAt() {
        return takenAt;
    }

    public Keeping kept() {
        return kept;
    }
}
