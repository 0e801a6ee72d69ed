package foretress.intake;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** When a page was first and last put before the client; part of the evidence behind a signature. */
@Entity
@Table(name = "page_shown")
class PageShown extends Stored {
    @Column(name = "visit_id") private UUID visitId;
    /** Names the page under the client's key: which pages were put before a client tells of answers. */
    private String page;
    /** The page's name, sealed. */
    @Column(columnDefinition = "text") private String name;
    @Column(name = "first_at") private Instant firstAt;
    @Column(name = "last_at") private Instant lastAt;

    protected PageShown() {}

    /** A page shown for the first time. */
    PageShown(UUID visitId, String code, Instant now, UnaryOperator<String> seal) {
        super(visitId, code, now);
        this.visitId = visitId;
        this.page = code;
        this.name = sealed("name", seal);
        this.firstAt = now;
        this.lastAt = now;
    }

    static List<PageShown> of(UUID visitId) {
        return SoFar.of(visitId).pages();
    }

    static void again(UUID id, Instant now) {
        update("lastAt = ?2 where id = ?1", id, now);
    }

    String page() {
        return page;
    }

    String name() {
        return name;
    }

    Instant firstAt() {
        return firstAt;
    }

    Instant lastAt() {
        return lastAt;
    }
}
