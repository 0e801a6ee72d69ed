package foretress.closing;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** The end of a visit: what was done and used, kept as it was said; a correction is another version and changes nothing in it. */
@Entity
@Immutable
@Table(name = "closing")
public class KeptClosing extends PanacheEntityBase {
    @Id
    public UUID id;
    @Column(name = "visit_id")
    public UUID visitId;
    @Column(name = "client_id")
    public UUID clientId;
    /** 1 as it was closed; each correction one more. */
    @Column(name = "version_no")
    public int versionNo;
    UUID submission;
    @Column(name = "closed_at")
    public Instant closedAt;
    @Column(name = "closed_by")
    public UUID closedBy;
    @Column(columnDefinition = "text")
    String body;

    String place() {
        return "closing.body." + id;
    }

    /** Every version of the closings of visits that were closed in that time, the newest first; when one was put right does not matter. */
    public static List<KeptClosing> between(Instant from, Instant until) {
        return list("visitId in (select one.visitId from KeptClosing one where one.versionNo = 1 and one.closedAt >= ?1 and one.closedAt < ?2) "
            + "order by closedAt desc, versionNo desc, id", from, until);
    }

    /** The one that holds. */
    static Optional<KeptClosing> ofVisit(UUID visitId) {
        return versions(visitId).stream().findFirst();
    }

    /** Newest first. */
    static List<KeptClosing> versions(UUID visitId) {
        return list("visitId = ?1 order by versionNo desc", visitId);
    }
}
