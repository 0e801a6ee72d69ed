package foretress.hair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One way to have covered a zone, each as likely as the others of its list: first centimetres left out, part of the length left
 * out, months of growth covered and centimetres beside them, no more than so many centimetres of the ends.
 *
 * <p>What a zone assumes. Whole, strands, not known: scalp to tip. Lengths and ends: the first 0 to 3 cm left out (common
 * practice, no source). Ends: from anywhere between the scalp and today's ends. New growth: what grew in 1 to 3 months
 * (touched up every four to twelve weeks; common practice, no source), or since the treatment before it when that is longer ago;
 * done again and again, each time what grew since the time before, back to the far edge of the first time, or to the tip where
 * nobody knows when that was. Where somebody said how many centimetres of new growth or of the ends it was, these.
 */
record Cover(double fromCm, double fromPart, double growthMonths, double growthCm, Optional<Range> lastCm) {
    static final double USUAL_TOUCH_UP_MONTHS = 3;

    private static final double LEFT_OUT_CM = 3;
    private static final int STEPS = 8;
    private static final double TO_THE_TIP = Double.POSITIVE_INFINITY;
    private static final List<Cover> ALL = List.of(new Cover(0, 0, TO_THE_TIP));
    private static final List<Cover> LENGTHS =
        steps(0, LEFT_OUT_CM).stream().map(cm -> new Cover(cm, 0, TO_THE_TIP)).toList();
    private static final List<Cover> ENDS = steps(0, 1).stream().map(part -> new Cover(0, part, TO_THE_TIP)).toList();

    Cover(double fromCm, double fromPart, double growthMonths) {
        this(fromCm, fromPart, growthMonths, 0, Optional.empty());
    }

    /** @param touchUpMonths what may have grown before the first time */
    static List<Cover> of(Treatment t, double touchUpMonths) {
        return switch (t.zone()) {
            case LENGTHS_ENDS -> LENGTHS;
            case ENDS -> t.ofTheEnds().map(Cover::ends).orElse(ENDS);
            case REGROWTH -> toTheTip(t) ? ALL : t.ofNewGrowth().map(Cover::newGrowth).orElseGet(
                () -> steps(1, touchUpMonths).stream().map(months -> new Cover(0, 0, months)).toList());
            default -> ALL;
        };
    }

    /** Where it reached then lies so much further out than the scalp of that day. */
    private static List<Cover> newGrowth(Range cm) {
        return steps(cm.fromCm(), cm.toCm()).stream().map(some -> new Cover(0, 0, 0, some, Optional.empty())).toList();
    }

    /** Trims only take from them, so no more than so many of today's. */
    private static List<Cover> ends(Range cm) {
        return List.of(new Cover(0, 0, TO_THE_TIP, 0, Optional.of(cm)));
    }

    /** Whether it covers all that was further out as well. */
    static boolean toTheTip(Treatment t) {
        return t.zone() != Zone.REGROWTH || t.repeated() && t.series().isEmpty();
    }

    private static List<Double> steps(double from, double to) {
        List<Double> steps = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            steps.add(from + (i + 0.5) * (to - from) / STEPS);
        }
        return steps;
    }

    /** Chance, 0 to 1, that the ends of which somebody said so many cm begin no further out than this. */
    double endsBegun(double cm, double lengthCm) {
        return lastCm.isEmpty() ? 1 : endsBegun(lastCm.get(), cm, lengthCm);
    }

    private static double endsBegun(Range last, double cm, double lengthCm) {
        return Math.max(0, Math.min(1, (last.toCm() - lengthCm + cm) / (last.toCm() - last.fromCm())));
    }

    boolean ends() {
        return growthMonths < TO_THE_TIP;
    }

    /** How far the scalp of the day of treatment must have got for its near edge to lie at this place. */
    double scalpAt(double cm, double lengthCm) {
        return (cm - fromPart * lengthCm) / (1 - fromPart) - fromCm;
    }
}
