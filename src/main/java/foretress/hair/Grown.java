package foretress.hair;

/**
 * How far from the scalp a place of a hair lies today that was there some time ago: rate × (months since, less the rest). The
 * rate is one of {@link Rates}; the months are as likely any between {@code newest} and {@code oldest}; a share of
 * {@link Growth#RESTING_SHARE} of the hairs rests, since as likely any moment of the last {@link Growth#REST_MONTHS} months, and
 * has not grown since. The place may have been {@code more} months of growth away from the scalp.
 *
 * <p>With u between the two, s the rest and c the months of growth it was away, the chance to lie within x is the mean of
 * g((max(0, u − s) + c) / x). Over u it is a difference of x·A, over s as well one of x²·B: no sum, no step.
 */
final class Grown {
    /** A span shorter than this is one moment. */
    private static final double ONE_MOMENT = 1e-6;
    private static final double AT_THE_SCALP_CM = 1e-6;

    private final Rates rates;
    private final double newest;
    private final double oldest;
    private final double more;

    /** Months ago, 0 ≤ newest ≤ oldest. */
    Grown(Rates rates, double newest, double oldest, double more) {
        this.rates = rates;
        this.newest = newest;
        this.oldest = oldest;
        this.more = more;
    }

    /** Chance, 0 to 1, to lie no further from the scalp than this. */
    double chanceWithin(double cm) {
        if (cm < 0) {
            return 0;
        }
        double x = Math.max(cm, AT_THE_SCALP_CM);
        if (x >= (oldest + more) / rates.quickest()) {
            return 1;
        }
        double leastGrown = Math.max(0, newest - Growth.REST_MONTHS) + more;
        if (leastGrown > 0 && x <= leastGrown / rates.slowest()) {
            return 0;
        }
        var place = new Place(x);
        double chance =
            (1 - Growth.RESTING_SHARE) * place.growing(0) + Growth.RESTING_SHARE * place.resting(Growth.REST_MONTHS);
        return Math.max(0, Math.min(1, chance));
    }

    /** The same for a hair that rests since this many months. */
    double chanceWithin(double cm, double rest) {
        return new Place(Math.max(cm, AT_THE_SCALP_CM)).growing(rest);
    }

    /** A place on the hair, with what its integrals begin from. */
    private final class Place {
        private final double x;
        private final double a;
        private final double b;

        Place(double x) {
            this.x = x;
            this.a = rates.a(more / x);
            this.b = rates.b(more / x);
        }

        double growing(double rest) {
            return oldest - newest < ONE_MOMENT ? rates.g((Math.max(0, newest - rest) + more) / x)
                : Math.max(0, Math.min(1, (once(oldest - rest) - once(newest - rest)) / (oldest - newest)));
        }

        double resting(double rest) {
            if (oldest - newest < ONE_MOMENT) {
                return (once(newest) - once(newest - rest)) / rest;
            }
            return (twice(oldest) - twice(newest) - twice(oldest - rest) + twice(newest - rest))
                / ((oldest - newest) * rest);
        }

        /** The integral from 0 to t of g((max(0, τ) + c) / x). */
        private double once(double t) {
            return t < 0 ? t * rates.g(more / x) : x * (rates.a((t + more) / x) - a);
        }

        /** The integral from 0 to t of {@link #once}. */
        private double twice(double t) {
            return t < 0 ? t * t / 2 * rates.g(more / x) : x * x * (rates.b((t + more) / x) - b) - x * t * a;
        }
    }
}
