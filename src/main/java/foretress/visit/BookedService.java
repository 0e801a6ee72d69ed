package foretress.visit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.util.List;
import java.util.UUID;

/** One service of a visit, with the steps that stay in it: a stylist may take a toner out by name. */
@Entity
@Table(name = "booked_service")
public class BookedService extends PanacheEntityBase {
    @Id private UUID id;
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "visit_id") private Visit visit;
    /** Where it stands in the visit, counted from 0. */
    private int place;
    /** Id of a service in knowledge. */
    @Column(name = "service_id") public String serviceId;
    @Column(name = "step_ids") private String stepIds;

    protected BookedService() {}

    BookedService(Visit visit, int place, Booked booked) {
        this.id = UUID.randomUUID();
        this.visit = visit;
        this.place = place;
        this.serviceId = booked.serviceId();
        this.stepIds = String.join(" ", booked.stepIds());
    }

    /** Ids of the steps in knowledge, in working order; never empty. */
    public List<String> stepIds() {
        return List.of(stepIds.split(" "));
    }
}
