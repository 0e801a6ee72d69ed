package foretress.skintest;

import foretress.intake.Plans;
import foretress.intake.Renewal;
import foretress.ledger.Ledger;
import foretress.vault.SealedJson;
import foretress.visit.PlannedProducts;
import foretress.visit.Visit;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.util.UUID;

/** Records that a test was put on. Once it returns, it is on the device. */
@Singleton
class Applications {
    private final Plans plans;
    private final Renewal renewal;
    private final SealedJson sealed;
    private final Ledger ledger;
    private final Clock clock;

    Applications(Plans plans, Renewal renewal, SealedJson sealed, Ledger ledger, Clock clock) {
        this.plans = plans;
        this.renewal = renewal;
        this.sealed = sealed;
        this.ledger = ledger;
        this.clock = clock;
    }

    /**
     * The same form twice is one test.
     *
     * @throws IllegalStateException when no consent to a test with this product is open
     */
    UUID record(UUID submission, UUID visitId, PlannedProducts.Planned product, TestMethod made, UUID staff) {
        return QuarkusTransaction.requiringNew()
            .call(() -> TestApplied.submitted(submission).map(earlier -> earlier.id())
                .orElseGet(() -> keep(submission, Visit.findById(visitId), product, made, staff)));
    }

    private UUID keep(UUID submission, Visit visit, PlannedProducts.Planned product, TestMethod made, UUID staff) {
        TestAgreement agreed = TestAgreement.open(visit.id, product.line().lineId, product.shade())
            .orElseThrow(() -> new IllegalStateException("nobody agreed to a test with this product"));
        var test = new TestApplied(submission, visit, product.line().id, agreed, staff, clock.instant(),
            Duration.ofHours(plans.skinTest(visit).waitHours()),
            sealed.sealing(visit.client.id, made));
        test.persist();
        ledger.note(staff.toString(), "skin test applied", test.id().toString());
        renewal.of(visit.id);
        return test.id();
    }
}
