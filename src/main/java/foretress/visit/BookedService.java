package foretress.visit;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.util.List;

/** One service of a visit, with the steps that stay in it: a stylist may take a toner out by name. */
@Entity
@Table(name = "booked_service")
public class BookedService extends Stored {
    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "visit_id") private Visit visit;
    /** Where it stands in the visit, counted from 0. */
    private int place;
    /** Id of a service in knowledge. */
    @Column(name = "service_id") public String serviceId;
    @Column(name = "step_ids") private String stepIds;

    protected BookedService() {}

    BookedService(Visit visit, int place, Booked booked) {
        super(visit, booked);
        this.visit = visit;
        this.place = (int) counted(place);
        this.serviceId = booked.serviceId();
        this.stepIds = String.join(" ", booked.stepIds());
    }

    /** Ids of the steps in knowledge, in working order; never empty. */
    public List<String> stepIds() {
        return List.of(stepIds.split(" "));
    }
}
