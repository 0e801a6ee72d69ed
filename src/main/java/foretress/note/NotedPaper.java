package foretress.note;

import foretress.bench.Keeping;
import foretress.picture.Paper;
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

/** The letter itself, sealed: a photo drawn anew, or a PDF. */
@Entity
@Table(name = "noted_paper")
public class NotedPaper extends Stored {
    @Column(name = "noted_id") private UUID notedId;
    @Column(name = "client_id") private UUID clientId;
    @Column(name = "kept_at") private Instant keptAt;
    @Column(name = "kept_by") private UUID keptBy;
    @Column(name = "media_type") private String mediaType;
    @Enumerated(EnumType.STRING) private Keeping kept;
    @Column(columnDefinition = "text") private String body;

    protected NotedPaper() {}

    NotedPaper(Noted note, Paper sent, UUID by, Instant now, UnaryOperator<String> seal) {
        super(note, sent, by, now);
        this.notedId = note.id();
        this.clientId = note.clientId();
        this.keptAt = now;
        this.keptBy = by;
        this.mediaType = sent.mediaType();
        this.kept = Keeping.of(sent);
        this.body = sealed("body", seal);
    }

    /** Takes the place of what was kept as it had been sent. */
    public void readAnew(Paper fresh, UnaryOperator<String> seal) {
        this.body = sealed("body", seal);
        this.mediaType = fresh.mediaType();
        this.kept = Keeping.of(fresh);
    }

    /** It stays as it was sent, and is handed out as a file only. */
    public void unreadable() {
        this.kept = Keeping.FILE;
    }

    static List<NotedPaper> of(UUID notedId) {
        return list("notedId = ?1 order by keptAt, id", notedId);
    }

    static Optional<NotedPaper> one(UUID notedId, UUID id) {
        return find("notedId = ?1 and id = ?2", notedId, id).firstResultOptional();
    }

    public UUID clientId() {
        return clientId;
    }

    public Instant keptAt() {
        return keptAt;
    }

    public String mediaType() {
        return mediaType;
    }

    public Keeping kept() {
        return kept;
    }

    public String body() {
        return body;
    }
}
