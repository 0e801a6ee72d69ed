package foretress.plan;

import foretress.assessment.Assessment;
import foretress.assessment.Policy;
import foretress.assessment.Service;
import foretress.assessment.Stricter;
import foretress.assessment.Weight;
import foretress.plan.OpeningHours.Window;
import foretress.plan.Owed.Conflict;
import foretress.plan.Owed.Reason;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * When the owed tests must be started and read so that the visit can keep its time. Waits are hours on the physical clock,
 * whatever the clocks on the wall do in between; opening hours are wall time.
 *
 * @param owed tests that need time, the one to be started first in front
 * @param onTheDay tests that are done at the visit itself
 */
public record TestPlan(Instant visit, List<Owed> owed, List<String> onTheDay) {
    public static final String SKIN_TEST = "skin-test";
    public static final String INCOMPATIBILITY_TEST = "incompatibility-test";

    public TestPlan {
        owed = List.copyOf(owed);
        onTheDay = List.copyOf(onTheDay);
    }

    public static TestPlan of(Assessment assessment, List<Service> booked, Instant visit, Policy policy, OpeningHours hours, Instant now) {
        return of(assessment, booked, visit, policy, Stricter.of(policy), hours, now);
    }

    /**
     * The plan for what is booked. Nobody is tested for a service that does not go ahead whatever the test says.
     *
     * @param skin what leaflet and policy ask of a skin test
     */
    public static TestPlan of(Assessment assessment, List<Service> booked, Instant visit, Policy policy, Stricter skin, OpeningHours hours,
            Instant now) {
        Set<String> demands = new LinkedHashSet<>();
        booked.stream().filter(service -> Weight.heaviest(assessment.on(service).stream().map(f -> f.on(service)).toList()) != Weight.PREVENTS)
            .forEach(service -> assessment.on(service).forEach(finding -> demands.addAll(finding.demands())));
        return of(demands, visit, policy, skin, hours, now);
    }

    /** @param demands ids of tests */
    public static TestPlan of(Collection<String> demands, Instant visit, Policy policy, OpeningHours hours, Instant now) {
        return of(demands, visit, policy, Stricter.of(policy), hours, now);
    }

    /** @param demands ids of tests */
    public static TestPlan of(Collection<String> demands, Instant visit, Policy policy, Stricter skin, OpeningHours hours, Instant now) {
        Map<String, Duration> waits = Map.of(SKIN_TEST, Duration.ofHours(skin.waitHours()),
            INCOMPATIBILITY_TEST, Duration.ofHours(policy.incompatibilityTestHours()));
        List<Owed> owed = demands.stream().filter(waits::containsKey).distinct()
            .map(test -> owed(test, waits.get(test), visit, earliest(test, visit, skin, hours, now), hours, now))
            .sorted(Comparator.comparing(Owed::latestStart).thenComparing(Owed::test)).toList();
        return new TestPlan(visit, owed, demands.stream().filter(test -> !waits.containsKey(test)).distinct().toList());
    }

    private static Owed owed(String test, Duration wait, Instant visit, Instant earliest, OpeningHours hours, Instant now) {
        Instant latest = visit.minus(wait);
        List<Window> windows = latest.isBefore(earliest) ? List.of() : hours.between(earliest, latest);
        return new Owed(test, wait, earliest, latest, visit, windows, conflict(wait, visit, latest, windows, now));
    }

    private static Optional<Conflict> conflict(Duration wait, Instant visit, Instant latest, List<Window> windows, Instant now) {
        if (!windows.isEmpty()) {
            return Optional.empty();
        }
        Duration left = visit.isBefore(now) ? Duration.ZERO : Duration.between(now, visit);
        return Optional.of(new Conflict(latest.isBefore(now) ? Reason.TOO_SOON : Reason.CLOSED_UNTIL_TOO_LATE, left, wait));
    }

    /** Now, or the first moment from which a skin test is not too old on the day of the visit. */
    private static Instant earliest(String test, Instant visit, Stricter skin, OpeningHours hours, Instant now) {
        if (!test.equals(SKIN_TEST)) {
            return now;
        }
        return skin.firstDay(visit.atZone(hours.zone()).toLocalDate()).map(day -> day.atStartOfDay(hours.zone()).toInstant())
            .filter(now::isBefore).orElse(now);
    }

    public boolean nothingToWaitFor() {
        return owed.isEmpty();
    }

    public List<Owed> conflicts() {
        return owed.stream().filter(test -> test.conflict().isPresent()).toList();
    }

    /** The last moment at which every waiting test can be started in one visit; empty when there is none, or none is owed. */
    public Optional<Instant> lastStartOfAll() {
        return conflicts().isEmpty() ? owed.stream().flatMap(test -> test.lastOpenStart().stream()).min(Comparator.naturalOrder()) : Optional.empty();
    }
}
