package foretress.salon;

import foretress.running.AuditEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The salon's product lines: what is used now, and every version there ever was. */
@ApplicationScoped
public class ProductLines {
    private final Event<AuditEvent> happened;
    private final Clock clock;

    ProductLines(Event<AuditEvent> happened, Clock clock) {
        this.happened = happened;
        this.clock = clock;
    }

    /** Every line as it is now, those in use first, by name. */
    public List<ProductLine> all() {
        return ProductLine.<ProductLine>find(
            "from ProductLine l where l.versionNo = (select max(p.versionNo) from ProductLine p where p.lineId = l.lineId)"
                + " order by l.retired, l.name, l.id")
            .list();
    }

    public List<ProductLine> inUse() {
        return all().stream().filter(line -> !line.retired).toList();
    }

    /** The line as it is now, retired or not. */
    public Optional<ProductLine> line(UUID lineId) {
        return versions(lineId).stream().findFirst();
    }

    /** The newest first. */
    public List<ProductLine> versions(UUID lineId) {
        return ProductLine.list("lineId = ?1 order by versionNo desc", lineId);
    }

    /** One version, for reading what a test once used. */
    public Optional<ProductLine> version(UUID id) {
        return ProductLine.findByIdOptional(id);
    }

    @Transactional
    public ProductLine add(UUID staff, ProductLine.Described described) {
        return keep(ProductLine.first(described, staff, clock.instant()), staff, "product line added");
    }

    /**
     * A new version after this one, in use.
     *
     * @throws jakarta.persistence.PersistenceException when somebody else made one meanwhile
     */
    @Transactional
    public ProductLine change(ProductLine before, UUID staff, ProductLine.Described described) {
        return keep(before.next(described, staff, clock.instant()), staff, "product line changed");
    }

    /** The same leaflet in a new version, taken out of use or put back; thrown at as {@link #change} is. */
    @Transactional
    public ProductLine turn(ProductLine before, UUID staff, boolean retired) {
        return keep(before.turned(retired, staff, clock.instant()), staff, "product line changed");
    }

    private ProductLine keep(ProductLine line, UUID staff, String what) {
        line.persistAndFlush();
        happened.fire(new AuditEvent(staff.toString(), what, line.id.toString()));
        return line;
    }
}
