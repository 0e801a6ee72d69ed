package foretress.salon;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** A service the salon made of known steps; or a known one with a mark that it is not offered. */
@Entity
@Table(name = "menu_item")
class MenuItem extends PanacheEntityBase {
    @Id @Column(name = "service_id") String serviceId;
    boolean own;
    @Column(name = "step_ids") String stepIds;
    boolean retired;
    @Column(name = "made_at") Instant madeAt;

    List<String> stepIds() {
        return stepIds.isEmpty() ? List.of() : List.of(stepIds.split(" "));
    }

    static List<MenuItem> all() {
        return list("order by madeAt, serviceId");
    }
}
