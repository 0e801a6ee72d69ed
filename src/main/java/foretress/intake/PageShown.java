package foretress.intake;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** When a page was first and last put before the client; part of the evidence behind a signature. */
@Entity
@Table(name = "page_shown")
class PageShown extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    public String page;
    @Column(name = "first_at")
    public Instant firstAt;
    @Column(name = "last_at")
    public Instant lastAt;

    static List<PageShown> of(UUID visitId) {
        return list("visitId = ?1 order by firstAt", visitId);
    }

    static void note(UUID visitId, String page, Instant now) {
        if (update("lastAt = ?3 where visitId = ?1 and page = ?2", visitId, page, now) == 0) {
            PageShown shown = new PageShown();
            shown.id = UUID.randomUUID();
            shown.visitId = visitId;
            shown.page = page;
            shown.firstAt = now;
            shown.lastAt = now;
            shown.persist();
        }
    }
}
