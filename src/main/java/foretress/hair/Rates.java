package foretress.hair;

/**
 * The distribution of one client's growth rate, seen from the time a centimetre takes: for z months a centimetre,
 * g(z) = P(rate ≤ 1/z), A(z) = the integral of g from 0 to z, and B(z) = the integral of A. With them the chances of a strand
 * map are closed forms, see {@link Grown}. The published distribution is held in tables made once; a narrowed one is the same,
 * shifted and stretched: (g − g at its lowest) / (g at its highest − g at its lowest).
 */
final class Rates {
    private static final int STEPS = 2_048;
    private static final double QUICKEST = 1 / Growth.FAST;
    private static final double STEP = (1 / Growth.SLOW - QUICKEST) / STEPS;
    private static final double NO_WIDTH = 1e-6;
    private static final double[] SHARE = new double[STEPS + 1];
    private static final double[] ONCE = new double[STEPS + 1];
    private static final double[] TWICE = new double[STEPS + 1];
    static final Rates PUBLISHED;

    static {
        for (int i = 0; i <= STEPS; i++) {
            SHARE[i] = Growth.published(1 / (QUICKEST + i * STEP));
        }
        ONCE[0] = QUICKEST;
        TWICE[0] = QUICKEST * QUICKEST / 2;
        for (int i = 0; i < STEPS; i++) {
            double middle = Growth.published(1 / (QUICKEST + (i + 0.5) * STEP));
            double half = ONCE[i] + STEP / 24 * (5 * SHARE[i] + 8 * middle - SHARE[i + 1]);
            ONCE[i + 1] = ONCE[i] + STEP / 6 * (SHARE[i] + 4 * middle + SHARE[i + 1]);
            TWICE[i + 1] = TWICE[i] + STEP / 6 * (ONCE[i] + 4 * half + ONCE[i + 1]);
        }
        PUBLISHED = new Rates(Growth.PUBLISHED);
    }

    private final double quickest;
    private final double slowest;
    private final double below;
    private final double width;
    private final double onceQuickest;
    private final double twiceQuickest;
    private final double onceSlowest;
    private final double twiceSlowest;

    private Rates(Growth growth) {
        quickest = 1 / growth.highest();
        below = share(1 / growth.lowest());
        width = share(quickest) - below;
        // A rate known to the micrometre is one rate: the quickest of those that are left.
        slowest = width < NO_WIDTH ? quickest : 1 / growth.lowest();
        onceQuickest = once(quickest);
        twiceQuickest = twice(quickest);
        onceSlowest = onceBetween(slowest);
        twiceSlowest = twiceBetween(slowest);
    }

    static Rates of(Growth growth) {
        return growth.equals(Growth.PUBLISHED) ? PUBLISHED : new Rates(growth);
    }

    double quickest() {
        return quickest;
    }

    double slowest() {
        return slowest;
    }

    /** g(z); 1 for any z the quickest growth is enough for. */
    double g(double z) {
        return z <= quickest ? 1 : z >= slowest ? 0 : (share(z) - below) / width;
    }

    /** A(z); z itself, below 0 too, for any z the quickest growth is enough for. */
    double a(double z) {
        return z <= quickest ? z : z >= slowest ? onceSlowest : onceBetween(z);
    }

    /** B(z). */
    double b(double z) {
        return z <= quickest ? z * z / 2 : z >= slowest ? twiceSlowest + onceSlowest * (z - slowest) : twiceBetween(z);
    }

    private double onceBetween(double z) {
        return z <= quickest ? z : quickest + (once(z) - onceQuickest - below * (z - quickest)) / width;
    }

    private double twiceBetween(double z) {
        double on = z - quickest;
        return quickest * quickest / 2 + quickest * on
            + (on <= 0 ? 0 : (twice(z) - twiceQuickest - onceQuickest * on - below * on * on / 2) / width);
    }

    private static int cell(double z) {
        return Math.max(0, Math.min(STEPS - 1, (int) ((z - QUICKEST) / STEP)));
    }

    private static double share(double z) {
        int i = cell(z);
        return SHARE[i] + (z - QUICKEST - i * STEP) / STEP * (SHARE[i + 1] - SHARE[i]);
    }

    private static double once(double z) {
        int i = cell(z);
        double on = z - QUICKEST - i * STEP;
        return ONCE[i] + on * (SHARE[i] + on / STEP / 2 * (SHARE[i + 1] - SHARE[i]));
    }

    private static double twice(double z) {
        int i = cell(z);
        double on = z - QUICKEST - i * STEP;
        return TWICE[i] + on * (ONCE[i] + on * (SHARE[i] / 2 + on / STEP / 6 * (SHARE[i + 1] - SHARE[i])));
    }
}
