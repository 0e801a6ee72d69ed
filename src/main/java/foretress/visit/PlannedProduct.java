package foretress.visit;

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
    @Id @Column(name = "visit_id") public UUID visitId;
    @Column(name = "line_id") public UUID lineId;
    public String shade;
    @Column(name = "named_at") Instant namedAt;
    @Column(name = "named_by") UUID namedBy;
}
