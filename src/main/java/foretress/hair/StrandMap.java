package foretress.hair;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What lies where on one client's hair on one day.
 *
 * @param lengthCm the length drawn: the known one, or an assumed one when {@code lengthKnown} is false
 */
public record StrandMap(LocalDate today, double lengthCm, boolean lengthKnown, boolean lengthMeasured,
    List<Lane> lanes) {
    /** Drawn when the length is not known; longer when a treatment could only show further out. */
    public static final double ASSUMED_CM = 60;
    private static final double ASSUMED_AT_MOST_CM = 120;
    private static final double ROOM_BEYOND_CM = 10;

    public StrandMap {
        lanes = List.copyOf(lanes);
    }

    public static StrandMap of(HairHistory history, LocalDate today) {
        OptionalDouble known = history.length().cm();
        double length = known.orElseGet(() -> assumed(history, today));
        List<Lane> lanes = history.treatments().stream()
            .map(t -> new Lane(t, today, history, length, touchUpMonths(t, history))).toList();
        return new StrandMap(today, length, known.isPresent(), history.length().measured(), lanes);
    }

    private static double assumed(HairHistory history, LocalDate today) {
        double furthest = history.treatments().stream()
            .mapToDouble(t -> Growth.safeNearEdge(Growth.monthsBetween(t.latest(), today))).max().orElse(0);
        return Math.min(ASSUMED_AT_MOST_CM, Math.max(ASSUMED_CM, Math.ceil(furthest + ROOM_BEYOND_CM)));
    }

    /** New growth reaches back to the treatment before, when that is longer ago than people usually wait. */
    private static double touchUpMonths(Treatment t, HairHistory history) {
        if (Cover.toTheTip(t)) {
            return 0;
        }
        LocalDate first = t.series().map(Series::firstLatest).orElse(t.latest());
        double apart = t.series().map(Series::monthsApart).orElse(Cover.USUAL_TOUCH_UP_MONTHS);
        double sinceLast = history.treatments().stream()
            .filter(other -> other.latest().isBefore(first))
            .mapToDouble(other -> Growth.monthsBetween(other.latest(), first)).min().orElse(0);
        return Math.max(Math.max(Cover.USUAL_TOUCH_UP_MONTHS, apart), sinceLast);
    }

    /** Length to cut to so that no lane suspected of metal has any left; empty when none is, or no hair would be left. */
    public Optional<Integer> metalFreeCutCm() {
        List<Lane> suspected = lanes.stream().filter(Lane::metalSuspected).filter(l -> l.nearCm() < lengthCm).toList();
        boolean possible = !suspected.isEmpty() && suspected.stream().allMatch(l -> l.cutToCm().isPresent());
        return possible ? suspected.stream().map(l -> l.cutToCm().orElseThrow()).min(Integer::compare)
            : Optional.empty();
    }

    /** Any lane suspected of metal. */
    public boolean metalSuspected() {
        return lanes.stream().anyMatch(Lane::metalSuspected);
    }
}
