package foretress.plan;

import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * When the owed tests must be started and read so that the visit can keep its time: the one answer that pages, API and command
 * give. Waits are hours on the physical clock, whatever the clocks on the wall do in between; opening hours are wall time.
 *
 * @param shut the salon is closed at the visit's own time, or on its day
 * @param owed tests that need time, the one to be started first in front
 * @param onTheDay tests that are done at the visit itself
 * @param waiting tests that prove nothing until something else is cleared up
 */
public record TestPlan(Instant visit, boolean shut, List<Owed> owed, List<String> onTheDay, List<String> waiting) {
    public static final String INCOMPATIBILITY_TEST = Waits.INCOMPATIBILITY_TEST;

    public TestPlan {
        owed = List.copyOf(owed);
        onTheDay = List.copyOf(onTheDay);
        waiting = List.copyOf(waiting);
    }

    public static TestPlan of(Owing owing, Instant visit, Waits waits, OpeningHours hours, Instant now) {
        TestPlan plan = of(owing.tests(), visit, waits, hours, now);
        return new TestPlan(visit, plan.shut, plan.owed, plan.onTheDay, owing.waiting());
    }

    /** @param tests ids of tests */
    public static TestPlan of(Collection<String> tests, Instant visit, Waits waits, OpeningHours hours, Instant now) {
        var planner = new Planner(visit, waits, hours, now);
        List<Owed> owed = tests.stream().distinct().filter(test -> !waits.readings(test).isEmpty()).map(planner::owed)
            .sorted(Comparator.comparing(Owed::latestStart).thenComparing(Owed::takes, Comparator.reverseOrder())
                .thenComparing(Owed::test))
            .toList();
        return new TestPlan(visit, !hours.open(visit, Owed.READING), owed,
            tests.stream().distinct().filter(test -> waits.readings(test).isEmpty()).toList(), List.of());
    }

    /** What is left to begin once these are running. */
    public TestPlan without(Set<String> begun) {
        return new TestPlan(visit, shut, owed.stream().filter(one -> !begun.contains(one.test())).toList(),
            onTheDay.stream().filter(test -> !begun.contains(test)).toList(),
            waiting.stream().filter(test -> !begun.contains(test)).toList());
    }

    /** Every test it speaks of, by id: the ones that need time first. */
    public List<String> tests() {
        return Stream.concat(owed.stream().map(Owed::test), onTheDay.stream()).toList();
    }

    public boolean nothingToWaitFor() {
        return owed.isEmpty();
    }

    public List<Owed> conflicts() {
        return owed.stream().filter(test -> test.conflict().isPresent()).toList();
    }

    /** The last moment at which every waiting test can be started in one visit; empty when there is none, or none is owed. */
    public Optional<Instant> lastStartOfAll() {
        return Offers.of(owed, 1).latest();
    }

    /** The earliest visit before which all of them can be kept; empty when nothing is owed, or no visit would do. */
    public Optional<Instant> visitFrom() {
        return owed.stream().anyMatch(one -> one.visitFrom().isEmpty()) ? Optional.empty()
            : owed.stream().flatMap(one -> one.visitFrom().stream()).max(Comparator.naturalOrder());
    }
}
