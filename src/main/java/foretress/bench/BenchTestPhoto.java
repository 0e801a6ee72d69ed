package foretress.bench;

import foretress.picture.RedrawnPhoto;
import foretress.running.Stored;
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
public class BenchTestPhoto extends Stored {
    @Column(name = "test_id") private UUID testId;
    @Column(name = "client_id") private UUID clientId;
    @Column(name = "taken_at") private Instant takenAt;
    @Column(name = "taken_by") private UUID takenBy;
    @Column(name = "media_type") private String mediaType;
    @Enumerated(EnumType.STRING) private Keeping kept;
    @Column(columnDefinition = "text") private String body;

    protected BenchTestPhoto() {}

    BenchTestPhoto(BenchRecord test, UUID by, Instant now, UnaryOperator<String> seal) {
        super(test, by, now);
        this.testId = test.id();
        this.clientId = test.clientId();
        this.takenAt = now;
        this.takenBy = by;
        redrawn(seal);
    }

    /** Takes the place of what was kept as it had been sent. */
    public void redrawn(UnaryOperator<String> seal) {
        this.body = sealed("body", seal);
        this.mediaType = RedrawnPhoto.MEDIA_TYPE;
        this.kept = Keeping.REDRAWN;
    }

    /** It stays as it was sent, and is handed out as a file only. */
    public void unreadable() {
        this.kept = Keeping.FILE;
    }

    public static List<BenchTestPhoto> of(UUID testId) {
        return list("testId = ?1 order by takenAt, id", testId);
    }

    static Optional<BenchTestPhoto> one(UUID testId, UUID id) {
        return find("testId = ?1 and id = ?2", testId, id).firstResultOptional();
    }

    public UUID clientId() {
        return clientId;
    }

    public Instant takenAt() {
        return takenAt;
    }

    public Keeping kept() {
        return kept;
    }

    public String body() {
        return body;
    }
}
