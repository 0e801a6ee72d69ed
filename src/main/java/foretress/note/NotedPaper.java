package foretress.note;

import foretress.bench.Keeping;
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

/** The letter itself, sealed: a photo drawn anew, or a PDF. */
@Entity
@Table(name = "noted_paper")
public class NotedPaper extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "noted_id")
    UUID notedId;
    @Column(name = "client_id")
    public UUID clientId;
    @Column(name = "kept_at")
    public Instant keptAt;
    @Column(name = "kept_by")
    UUID keptBy;
    @Column(name = "media_type")
    public String mediaType;
    @Enumerated(EnumType.STRING)
    public Keeping kept;
    @Column(columnDefinition = "text")
    public String body;

    public String place() {
        return "noted_paper.body." + id;
    }

    static List<NotedPaper> of(UUID notedId) {
        return list("notedId = ?1 order by keptAt, id", notedId);
    }

    static Optional<NotedPaper> one(UUID notedId, UUID id) {
        return find("notedId = ?1 and id = ?2", notedId, id).firstResultOptional();
    }
}
