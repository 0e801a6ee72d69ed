package foretress.skintest;

import foretress.intake.Renewal;
import foretress.visit.PlannedProducts;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;

/** Another product is another question to the skin: what was tested may no longer count, so the visit is assessed anew. */
@Singleton
class ProductChanges {
    private final Renewal renewal;

    ProductChanges(Renewal renewal) {
        this.renewal = renewal;
    }

    void follow(@Observes PlannedProducts.Changed changed) {
        renewal.of(changed.visitId());
    }
}
