package foretress.plan;

import foretress.plan.OpeningHours.Window;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The moments at which a client can come in so that a test can begin, the latest first: the fresher the test, the better,
 * and the later, the easier to say yes to.
 *
 * @param starts on the quarters of the hour, and the very last moment even where it is none; the latest first
 */
public record Offers(List<Instant> starts) {
    /** What putting on a test takes, and so the time that must be left before closing. */
    public static final Duration TAKES = Duration.ofMinutes(15);
    private static final long QUARTER_SECONDS = 900;

    public Offers {
        starts = List.copyOf(starts);
    }

    /**
     * @param earliest of the start
     * @param latest of the start; the visit less the wait
     * @param most how many to offer at most, counted from the latest
     */
    public static Offers between(Instant earliest, Instant latest, OpeningHours hours, int most) {
        if (latest.isBefore(earliest)) {
            return new Offers(List.of());
        }
        List<Instant> starts = new ArrayList<>();
        hours.between(earliest, latest.plus(TAKES)).forEach(window -> starts.addAll(within(window)));
        Collections.reverse(starts);
        return new Offers(starts.subList(0, Math.min(most, starts.size())));
    }

    /** Every zone's offset today is a multiple of a quarter of an hour, so quarters of UTC are quarters on the wall. */
    private static List<Instant> within(Window window) {
        List<Instant> starts = new ArrayList<>();
        Instant last = window.to().minus(TAKES);
        long first = -Math.floorDiv(-window.from().getEpochSecond(), QUARTER_SECONDS) * QUARTER_SECONDS;
        for (Instant at = Instant.ofEpochSecond(first); !at.isAfter(last); at = at.plusSeconds(QUARTER_SECONDS)) {
            starts.add(at);
        }
        if (!last.isBefore(window.from()) && (starts.isEmpty() || starts.get(starts.size() - 1).isBefore(last))) {
            starts.add(last);
        }
        return starts;
    }

    public Optional<Instant> latest() {
        return starts.stream().findFirst();
    }

    public boolean offer(Instant start) {
        return starts.contains(start);
    }
}
