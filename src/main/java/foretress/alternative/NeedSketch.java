package foretress.alternative;

import java.util.Locale;
import java.util.Optional;

/**
 * A hair drawn beside what would have to happen: tufts cut from it, cut off, or grown out. The words beside it say the same.
 *
 * @param cutAt where it is cut, in units of a hair drawn from {@value #ROOT} to {@value #TIP}
 * @param stays how many cm stay, in words; both empty where nothing is cut
 */
public record NeedSketch(Of of, String cutAt, String stays) {
    static final int ROOT = 14, TIP = 250;

    /** What happens to the hair. */
    public enum Of {
        TUFTS, CUT, GROWN
    }

    static Optional<NeedSketch> tufts() {
        return Optional.of(new NeedSketch(Of.TUFTS, "", ""));
    }

    static Optional<NeedSketch> grown() {
        return Optional.of(new NeedSketch(Of.GROWN, "", ""));
    }

    /** @param lengthCm of the hair today, above 0 and no less than what stays */
    static Optional<NeedSketch> cut(int cm, double lengthCm, String unit) {
        double at = ROOT + (TIP - ROOT) * Math.min(1, cm / lengthCm);
        return Optional.of(new NeedSketch(Of.CUT, String.format(Locale.ROOT, "%.1f", at), cm + " " + unit));
    }
}
