package foretress.skintest;

import foretress.assessment.SkinTestOutcome;
import foretress.assessment.Stricter;
import foretress.assessment.TestStanding;
import foretress.salon.Policies;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.visit.Visit;
import foretress.visit.Visits;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** The skin tests of a client, for rooms above. */
@ApplicationScoped
public class SkinTestHistory {
    private final TestStore tests;
    private final SkinTestRecord record;
    private final ProductLines lines;
    private final Policies policies;
    private final Visits visits;
    private final Clock clock;

    SkinTestHistory(TestStore tests, SkinTestRecord record, ProductLines lines, Policies policies, Visits visits,
        Clock clock) {
        this.tests = tests;
        this.record = record;
        this.lines = lines;
        this.policies = policies;
        this.visits = visits;
        this.clock = clock;
    }

    /**
     * One test as a record card shows it.
     *
     * @param product line and shade
     * @param due from when it may be read
     * @param read when a member of staff first read it after the wait
     * @param result empty until staff have read it or the client told of a reaction
     * @param validUntil the last day on which a negative one still counts; empty when it counts for one application
     * @param voidReasons why it does not lift the demand for the client's next visit; empty when it does
     */
    public record Kept(UUID id, UUID visitId, String product, String batch, Instant applied, Instant due,
        Optional<Instant> read,
        Optional<SkinTestOutcome> result, Optional<LocalDate> validUntil, List<TestStanding.Reason> voidReasons) {
        public Kept {
            voidReasons = List.copyOf(voidReasons);
        }

        public boolean reacted() {
            return result.filter(SkinTestOutcome::reacted).isPresent();
        }
    }

    /** The newest first. */
    public List<Kept> of(UUID clientId) {
        List<Visit> all = visits.of(clientId);
        return tests.ofClient(clientId).stream().map(told -> kept(told, bearing(told, all))).toList();
    }

    /** Whether staff have looked at the spot on the visit's day, right before mixing. */
    public boolean readBeforeMixing(UUID visitId) {
        Visit visit = Visit.findById(visitId);
        LocalDate today = clock.instant().atZone(visit.zone()).toLocalDate();
        return tests.ofClient(visit.client.id).stream().flatMap(told -> told.counting().stream())
            .anyMatch(one -> one.byStaff() && one.look().mixing()
                && one.entry().madeAt().atZone(visit.zone()).toLocalDate().equals(today));
    }

    Kept kept(TestFile told, Visit visit) {
        ProductLine line = lines.version(told.test().lineVersion()).orElseThrow();
        LocalDate begun = told.test().appliedAt().atZone(visit.zone()).toLocalDate();
        return new Kept(told.test().id(), told.test().visitId(), line.name + ", " + told.made().shade(),
            told.made().batch(), told.test().appliedAt(),
            told.test().readableFrom(), told.readNegative(told.test().readableFrom()).map(one -> one.entry().madeAt()),
            told.result(),
            Stricter.of(policies.effective(), Optional.of(line.leaflet())).lastDay(begun), record.doubts(told, visit));
    }

    /** The next visit the test may serve, else the one it was made for. */
    private static Visit bearing(TestFile told, List<Visit> all) {
        return all.stream().filter(visit -> visit.state.isAhead())
            .min(Comparator.comparing((Visit visit) -> visit.startsAt))
            .orElseGet(() -> Visit.findById(told.test().visitId()));
    }
}
