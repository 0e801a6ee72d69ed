package foretress.hair;

import java.time.LocalDate;
import java.util.List;

/**
 * How likely any of a treatment is left at the slowest growth, with four months of rest. Of a long span only the last year
 * counts, so that a far past does not thin out the near one. What decides; a picture needs more, see {@link Lane}.
 *
 * @param chance 0 to 1; 1 when the length is not known
 * @param metalSuspected metal is possible and not ruled out: for that the client must be sure of the last use and staff have
 *     measured
 */
public record SafeSide(double chance, boolean metalSuspected) {
    private static final int SPAN_DAYS = 365;

    public static SafeSide of(Treatment treatment, HairLength length, List<Cut> cuts, LocalDate today) {
        double chance = length.cm().isPresent() ? chance(treatment, length.cm().getAsDouble(), cuts, today) : 1;
        boolean ruledOut = treatment.sure() && length.measured() && chance < Lane.SUSPECTED_FROM;
        return new SafeSide(chance, treatment.metalPossible() && !ruledOut);
    }

    private static double chance(Treatment treatment, double lengthCm, List<Cut> cuts, LocalDate today) {
        LocalDate latest = treatment.latest().isAfter(today) ? today : treatment.latest();
        LocalDate first = latest.minusDays(SPAN_DAYS - 1);
        LocalDate from = !treatment.earliest().isAfter(first) ? first : treatment.earliest().isAfter(latest) ? latest : treatment.earliest();
        long left = from.datesUntil(latest.plusDays(1)).filter(day -> left(day, lengthCm, cuts, today)).count();
        return (double) left / from.datesUntil(latest.plusDays(1)).count();
    }

    private static boolean left(LocalDate day, double lengthCm, List<Cut> cuts, LocalDate today) {
        return edge(day, today) < lengthCm && cuts.stream().filter(cut -> cut.day().isAfter(day) && !cut.day().isAfter(today))
            .allMatch(cut -> edge(day, cut.day()) < cut.toCm());
    }

    private static double edge(LocalDate day, LocalDate seen) {
        return Growth.safeNearEdge(Growth.monthsBetween(day, seen));
    }
}
