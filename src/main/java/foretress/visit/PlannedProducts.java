package foretress.visit;

import foretress.ledger.Ledger;
import foretress.running.Asked;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Which product a visit is planned with, once somebody has named it. */
@ApplicationScoped
public class PlannedProducts {
    private final ProductLines lines;
    private final Ledger ledger;
    private final Event<Changed> changed;
    private final Clock clock;

    PlannedProducts(ProductLines lines, Ledger ledger, Event<Changed> changed, Clock clock) {
        this.lines = lines;
        this.ledger = ledger;
        this.changed = changed;
        this.clock = clock;
    }

    /** The line as its newest leaflet has it. */
    public record Planned(ProductLine line, String shade) {}

    /** Told after it was kept, to rooms above whose plans hang on the product. */
    public record Changed(UUID visitId) {}

    public Optional<Planned> of(UUID visitId) {
        return Asked.once(List.of(Planned.class, visitId),
            () -> PlannedProduct.<PlannedProduct>findByIdOptional(visitId)
                .flatMap(row -> lines.line(row.lineId).map(line -> new Planned(line, row.shade))));
    }

    /** @param shade as the label has it; the same product again changes nothing */
    public void name(UUID visitId, UUID lineId, String shade, UUID staff) {
        boolean news = QuarkusTransaction.requiringNew().call(() -> keep(visitId, lineId, shade, staff));
        if (news) {
            changed.fire(new Changed(visitId));
        }
    }

    private boolean keep(UUID visitId, UUID lineId, String shade, UUID staff) {
        Optional<PlannedProduct> before = PlannedProduct.findByIdOptional(visitId);
        if (before.filter(row -> row.is(lineId, shade)).isPresent()) {
            return false;
        }
        before.ifPresentOrElse(row -> row.becomes(lineId, shade, staff, clock.instant()),
            () -> new PlannedProduct(visitId, lineId, shade, staff, clock.instant()).persist());
        ledger.note(staff.toString(), "product named for visit", visitId.toString());
        return true;
    }

    public void clear(UUID visitId, UUID staff) {
        boolean was = QuarkusTransaction.requiringNew().call(() -> {
            ledger.note(staff.toString(), "product taken off visit", visitId.toString());
            return PlannedProduct.deleteById(visitId);
        });
        if (was) {
            changed.fire(new Changed(visitId));
        }
    }
}
