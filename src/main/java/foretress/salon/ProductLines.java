package foretress.salon;

import foretress.running.Happened;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;

/** The salon's product lines: what is used now, and every version there ever was. */
@ApplicationScoped
public class ProductLines {
    private final Event<Happened> happened;
    private final Clock clock;

    ProductLines(Event<Happened> happened, Clock clock) {
        this.happened = happened;
        this.clock = clock;
    }

    /** Every line as it is now, those in use first, by name. */
    public List<ProductLine> all() {
        return ProductLine.<ProductLine>find("from ProductLine l where l.versionNo = (select max(p.versionNo) from ProductLine p where p.lineId = l.lineId)"
            + " order by l.retired, l.name, l.id").list();
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

    /** @param filled sets everything but ids, number and date */
    @Transactional
    public ProductLine add(UUID staff, Consumer<ProductLine> filled) {
        return keep(UUID.randomUUID(), 1, staff, "product line added", filled);
    }

    /**
     * A new version after this one.
     *
     * @throws jakarta.persistence.PersistenceException when somebody else made one meanwhile
     */
    @Transactional
    public ProductLine change(ProductLine before, UUID staff, Consumer<ProductLine> filled) {
        return keep(before.lineId, before.versionNo + 1, staff, "product line changed", filled);
    }

    private ProductLine keep(UUID lineId, int number, UUID staff, String what, Consumer<ProductLine> filled) {
        var line = new ProductLine();
        filled.accept(line);
        line.id = UUID.randomUUID();
        line.lineId = lineId;
        line.versionNo = number;
        line.madeAt = clock.instant();
        line.madeBy = staff;
        line.persistAndFlush();
        happened.fire(new Happened(staff.toString(), what, line.id.toString()));
        return line;
    }
}
