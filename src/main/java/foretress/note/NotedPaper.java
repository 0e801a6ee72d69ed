package foretress.note;

import foretress.bench.Keeping;
import foretress.picture.Paper;
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

/** The letter itself, sealed: a photo drawn anew, or a PDF. */
@Entity
@Table(name = "noted_paper")
public class NotedPaper extends SealedRow {
    @Column(name = "noted_id") private UUID notedId;
    @Column(name = "kept_at") private Instant keptAt;
    @Column(name = "kept_by") private UUID keptBy;
    @Column(name = "media_type") private String mediaType;
    @Enumerated(EnumType.STRING) private Keeping kept;

    protected NotedPaper() {}

    NotedPaper(Noted note, Paper sent, UUID by, Instant now, UnaryOperator<String> seal) {
        super(note.clientId(), seal, sent, by, now);
        this.notedId = note.id();
        this.keptAt = now;
        this.keptBy = by;
        this.mediaType = sent.mediaType();
        this.kept = Keeping.of(sent);
    }

    /** Takes the place of what was kept as it had been sent. */
    public void readAnew(Paper fresh, UnaryOperator<String> seal) {
        seal(seal);
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

    public Instant keptAt() {
        return keptAt;
    }

    public String mediaType() {
        return mediaType;
    }

    public Keeping kept() {
        return kept;
    }
}
