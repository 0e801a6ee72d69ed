package foretress.hair;

import java.time.LocalDate;
import java.util.List;

/**
 * Where on a hair one treatment can lie today, over the client's growth rate, the day it was done, the rest of the hair and the
 * ways to have covered its zone. Its near edge comes from the last time, its far edge from the first.
 */
abstract class Reach {
    /** "Any left" means one treated hair in 200. */
    private static final double ONE_HAIR_IN = 200;
    /** The least grown hair in so many treated ones has rested for this long. */
    static final double LONG_REST_MONTHS = Growth.REST_MONTHS * (1 - 1 / (ONE_HAIR_IN * Growth.RESTING_SHARE));

    final List<Cover> covers;
    final double lengthCm;

    Reach(List<Cover> covers, double lengthCm) {
        this.covers = covers;
        this.lengthCm = lengthCm;
    }

    static Reach of(Treatment t, LocalDate today, HairHistory history, double lengthCm, double touchUpMonths) {
        List<Cover> covers = Cover.of(t, touchUpMonths);
        Span last = Span.of(t.earliest(), t.latest(), today, lengthCm);
        Span first =
            t.series().map(s -> Span.of(s.firstEarliest(), s.firstLatest(), today, lengthCm).before(last)).orElse(last);
        List<Cut> cuts =
            history.cuts().stream().filter(c -> c.day().isAfter(t.earliest()) && !c.day().isAfter(today)).toList();
        return cuts.isEmpty() ? new UncutReach(Rates.of(history.growth()), last, first, covers, lengthCm)
            : new CutReach(history.growth(), last, first, CutReach.limits(cuts, today), covers, lengthCm);
    }

    /** Chance that the residue lies on a treated hair at this place. */
    abstract double chanceAt(double cm);

    /** Chance that the near edge lies no further out than this, cuts apart. */
    abstract double chanceNearBy(double cm);

    /** Chance that the far edge lies no further out than this; 0 before the tip where the treatment went to the tip. */
    abstract double chanceFarBy(double cm);

    /** Whether the near edge lies no further out than this with at least so much of a chance. */
    boolean isNearBy(double cm, double chance) {
        return chanceNearBy(cm) >= chance;
    }

    /** The same of the far edge. */
    boolean isFarBy(double cm, double chance) {
        return chanceFarBy(cm) >= chance;
    }

    /** Chance, over rate and day, that at least one treated hair in 200 still carries some. */
    abstract double chanceAnyLeft();
}
