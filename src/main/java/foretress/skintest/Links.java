package foretress.skintest;

import foretress.ledger.Ledger;
import foretress.salon.Policies;
import foretress.visit.Visit;
import foretress.web.PublicAddress;
import foretress.web.RandomText;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;

/** Aftercare links: made, and recognised again. */
@ApplicationScoped
class Links {
    private final Policies policies;
    private final PublicAddress address;
    private final Ledger ledger;
    private final Clock clock;

    Links(Policies policies, PublicAddress address, Ledger ledger, Clock clock) {
        this.policies = policies;
        this.address = address;
        this.ledger = ledger;
        this.clock = clock;
    }

    /** A further link to the test; earlier ones stay good until what was signed is no longer kept. */
    @Transactional
    String make(UUID testId, String actor) {
        TestApplied test = TestApplied.byId(testId).orElseThrow();
        Visit visit = Visit.findById(test.visitId());
        String token = RandomText.fresh();
        new AftercareLink(test, token, clock.instant(),
            visit.startsThere().plusYears(policies.effective().retentionYears()).toInstant()).persist();
        ledger.note(actor, "aftercare link made", test.id().toString());
        return address.link("/a/" + token);
    }

    Optional<TestApplied> behind(String token) {
        return AftercareLink.behind(token, clock.instant()).flatMap(link -> TestApplied.byId(link.testId()));
    }
}
