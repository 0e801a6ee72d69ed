package foretress.plan;

import foretress.plan.Owed.Starts;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The moments at which a client can come in so that every owed test can begin, the latest first: the fresher the test, the
 * better, and the later, the easier to say yes to.
 *
 * @param slots on the quarters of the hour, and the very last moment even where it is none; the latest first
 */
public record Offers(List<Slot> slots) {
    public static final Offers NONE = new Offers(List.of());
    private static final long QUARTER_SECONDS = 900;

    public Offers {
        slots = List.copyOf(slots);
    }

    /**
     * One moment.
     *
     * @param latest nothing later would do
     * @param slack what may still go wrong: the time left between the end of the wait and the last moment to read
     */
    public record Slot(Instant start, boolean latest, Duration slack) {
        /** A client who is a quarter of an hour late would be too late. */
        public boolean tight() {
            return slack.compareTo(Owed.START) < 0;
        }
    }

    /**
     * @param owed tests to be begun together; one that has a conflict leaves no moment for all
     * @param most how many to offer at most, counted from the latest
     */
    public static Offers of(List<Owed> owed, int most) {
        if (owed.isEmpty()) {
            return NONE;
        }
        List<Instant> starts =
            new ArrayList<>(owed.get(0).windows().stream().flatMap(window -> on(cut(window, owed)).stream()).toList());
        starts.removeIf(start -> !owed.stream().allMatch(one -> one.mayStart(start)));
        Collections.reverse(starts);
        return new Offers(starts.stream().limit(most)
            .map(start -> new Slot(start, start.equals(starts.get(0)), slack(owed, start))).toList());
    }

    /** No test's own last start is overlooked because it is no quarter of the hour. */
    private static Starts cut(Starts window, List<Owed> owed) {
        Instant latest = owed.stream().map(Owed::latestStart).min(Comparator.naturalOrder()).orElseThrow();
        return new Starts(window.first(), OpeningHours.earlier(window.last(), latest));
    }

    private static Duration slack(List<Owed> owed, Instant start) {
        return owed.stream().map(one -> one.slack(start)).min(Comparator.naturalOrder()).orElseThrow();
    }

    /** Every zone's offset today is a multiple of a quarter of an hour, so quarters of UTC are quarters on the wall. */
    private static List<Instant> on(Starts window) {
        List<Instant> starts = new ArrayList<>();
        long first = -Math.floorDiv(-window.first().getEpochSecond(), QUARTER_SECONDS) * QUARTER_SECONDS;
        for (Instant at = Instant.ofEpochSecond(first); !at.isAfter(window.last());
            at = at.plusSeconds(QUARTER_SECONDS)) {
            if (!at.isBefore(window.first())) {
                starts.add(at);
            }
        }
        if (!window.last().isBefore(window.first()) && !starts.contains(window.last())) {
            starts.add(window.last());
        }
        return starts;
    }

    public Optional<Instant> latest() {
        return slots.stream().findFirst().map(Slot::start);
    }

    public boolean offer(Instant start) {
        return slots.stream().anyMatch(slot -> slot.start().equals(start));
    }
}
