package foretress.hair;

import java.time.LocalDate;
import java.util.List;

/**
 * How likely any of a treatment is left at the slowest growth, with four months of rest, done on the last day it can have been.
 * What decides; a picture needs more, see {@link Lane}. At one rate, one rest and one day there is no chance in between: 1 or
 * 0. The last day, because a date told less precisely must never leave less of the treatment than any day it can mean; and the
 * published bound, because one measured season does not speak for the years before it.
 *
 * @param chance 1 or 0; 1 when the length is not known
 * @param metalSuspected metal is possible and not ruled out: for that the client must be sure of the last use, staff have
 *     measured, and nothing speak for growth slower than published
 */
public record SafeSide(double chance, boolean metalSuspected) {

    /** @param slowed the hair may grow more slowly than the bound this reckons with */
    public static SafeSide of(Treatment treatment, HairLength length, List<Cut> cuts, LocalDate today,
        boolean slowed) {
        LocalDate latest = treatment.latest().isAfter(today) ? today : treatment.latest();
        double chance = length.cm().isEmpty() || left(latest, length.cm().getAsDouble(), cuts, today) ? 1 : 0;
        boolean ruledOut = !slowed && treatment.sure() && length.measured() && chance < Lane.SUSPECTED_FROM;
        return new SafeSide(chance, treatment.metalPossible() && !ruledOut);
    }

    private static boolean left(LocalDate day, double lengthCm, List<Cut> cuts, LocalDate today) {
        return edge(day, today) < lengthCm
            && cuts.stream().filter(cut -> cut.day().isAfter(day) && !cut.day().isAfter(today))
                .allMatch(cut -> edge(day, cut.day()) < cut.toCm());
    }

    private static double edge(LocalDate day, LocalDate seen) {
        return Growth.safeNearEdge(Growth.monthsBetween(day, seen));
    }
}
