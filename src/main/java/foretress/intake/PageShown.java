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
    /** Names the page under the client's key: which pages were put before a client tells of answers. */
    public String page;
    /** The page's name, sealed. */
    @Column(columnDefinition = "text")
    public String name;
    @Column(name = "first_at")
    public Instant firstAt;
    @Column(name = "last_at")
    public Instant lastAt;

    static List<PageShown> of(UUID visitId) {
        return list("visitId = ?1 order by firstAt", visitId);
    }

    static boolean again(UUID visitId, String page, Instant now) {
        return update("lastAt = ?3 where visitId = ?1 and page = ?2", visitId, page, now) > 0;
    }

    String place() {
        return "page_shown.name." + id;
    }
}
