package foretress.salon;

import foretress.running.Stored;
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
    @Id
    @Column(name = "service_id") String serviceId;
    boolean own;
    @Column(name = "step_ids") private String stepIds;
    boolean retired;
    @Column(name = "made_at") private Instant madeAt;

    protected MenuItem() {}

    private MenuItem(String serviceId, boolean own, List<String> stepIds, Instant madeAt) {
        Stored.needed(serviceId, madeAt);
        this.serviceId = serviceId;
        this.own = own;
        this.stepIds = String.join(" ", stepIds);
        this.madeAt = madeAt;
    }

    /** A service the salon made. */
    static MenuItem own(String serviceId, List<String> stepIds, Instant madeAt) {
        if (stepIds.isEmpty()) {
            throw new IllegalArgumentException("A service of the salon's own has at least one step: " + serviceId);
        }
        return new MenuItem(serviceId, true, stepIds, madeAt);
    }

    /** A place for what the salon says of a service everybody knows; until it says so, it is offered. */
    static MenuItem known(String serviceId, Instant madeAt) {
        return new MenuItem(serviceId, false, List.of(), madeAt);
    }

    /** Takes it out of what is offered, or puts it back. */
    void turn(boolean retire) {
        retired = retire;
    }

    List<String> stepIds() {
        return stepIds.isEmpty() ? List.of() : List.of(stepIds.split(" "));
    }

    static List<MenuItem> all() {
        return list("order by madeAt, serviceId");
    }
}
