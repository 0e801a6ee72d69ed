package foretress.hair;

import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Without a known cut the two edges follow from one rate and one rest, and the near one never passes the far one. So the
 * chance to lie at a place is the chance of the near edge within it less that of the far edge, both closed forms of
 * {@link Grown}, whatever ties the first day to the last.
 */
final class UncutReach extends Reach {
    private static final double ROUNDING = 1e-9;

    private final Grown near;
    private final List<Far> far;

    /** So far out the covered growth ended on the day. */
    private record Far(Grown growth, double cm) {}

    UncutReach(Rates rates, Span last, Span first, List<Cover> covers, double lengthCm) {
        super(covers, lengthCm);
        near = new Grown(rates, last.newest(), last.oldest(), 0);
        far = covers.stream().filter(Cover::ends)
            .map(c -> new Far(new Grown(rates, first.newest(), first.oldest(), c.growthMonths()), c.growthCm()))
            .toList();
    }

    @Override
    double chanceAt(double cm) {
        return cm > lengthCm ? 0 : Math.max(0, chanceNearBy(cm) - grownBy(cm));
    }

    @Override
    double chanceNearBy(double cm) {
        double sum = 0;
        for (Cover cover : covers) {
            sum += cover.endsBegun(cm, lengthCm) * near.chanceWithin(cover.scalpAt(cm, lengthCm));
            if (cover.ends()) {
                return sum;
            }
        }
        return sum / covers.size();
    }

    @Override
    double chanceFarBy(double cm) {
        return cm >= lengthCm ? 1 : grownBy(cm);
    }

    @Override
    boolean isNearBy(double cm, double chance) {
        return covers.get(0).ends() ? chanceNearBy(cm) >= chance
            : meanReaches(chance, covers.size(), i -> covers.get(i).endsBegun(cm, lengthCm)
                * near.chanceWithin(covers.get(i).scalpAt(cm, lengthCm)));
    }

    @Override
    boolean isFarBy(double cm, double chance) {
        return cm >= lengthCm || far.isEmpty() ? chanceFarBy(cm) >= chance
            : meanReaches(chance, far.size(), i -> far.get(i).growth.chanceWithin(cm - far.get(i).cm));
    }

    /**
     * Each way to have covered a zone begins, or ends, further out than the one before and adds no more: those between the first and
     * the last are asked only as long as these two leave the mean open.
     */
    private static boolean meanReaches(double least, int ways, IntToDoubleFunction chance) {
        double last = chance.applyAsDouble(ways - 1);
        double sum = 0;
        for (int i = 0; i < ways - 1; i++) {
            double one = chance.applyAsDouble(i);
            int toCome = ways - 1 - i;
            sum += one;
            if ((sum + toCome * last) / ways >= least + ROUNDING) {
                return true;
            }
            if ((sum + toCome * one) / ways < least - ROUNDING) {
                return false;
            }
        }
        return (sum + last) / ways >= least;
    }

    private double grownBy(double cm) {
        double sum = 0;
        for (Far one : far) {
            sum += one.growth.chanceWithin(cm - one.cm);
        }
        return far.isEmpty() ? 0 : sum / far.size();
    }

    @Override
    double chanceAnyLeft() {
        return near.chanceWithin(lengthCm, LONG_REST_MONTHS);
    }
}
