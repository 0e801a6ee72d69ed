package foretress.visit;

import foretress.running.Stored;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** The product line a visit is planned with, and its darkest shade: what a skin test has to be made of. */
@Entity
@Table(name = "planned_product")
public class PlannedProduct extends PanacheEntityBase {
    @Id
    @Column(name = "visit_id") private UUID visitId;
    @Column(name = "line_id") public UUID lineId;
    public String shade;
    @Column(name = "named_at") private Instant namedAt;
    @Column(name = "named_by") private UUID namedBy;

    protected PlannedProduct() {}

    PlannedProduct(UUID visitId, UUID line, String itsShade, UUID by, Instant now) {
        Stored.needed(visitId);
        this.visitId = visitId;
        becomes(line, itsShade, by, now);
    }

    boolean is(UUID line, String itsShade) {
        return line.equals(lineId) && itsShade.equals(shade);
    }

    /** @param itsShade as the label has it */
    void becomes(UUID line, String itsShade, UUID by, Instant now) {
        Stored.needed(line, itsShade, by, now);
        lineId = line;
        shade = itsShade;
        namedAt = now;
        namedBy = by;
    }
}
