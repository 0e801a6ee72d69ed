package foretress.hair;

import java.util.ArrayList;
import java.util.List;

/**
 * One way to have covered a zone, each as likely as the others of its list: first centimetres left out, part of the length left
 * out, months of growth covered.
 *
 * <p>What a zone assumes. Whole, strands, not known: scalp to tip. Lengths and ends: the first 0 to 3 cm left out (common
 * practice, no source). Ends: from anywhere between the scalp and today's ends. New growth: what grew in 1 to 3 months
 * (touched up every four to twelve weeks; common practice, no source), or since the treatment before it when that is longer ago;
 * done again and again, each time what grew since the time before, back to the far edge of the first time, or to the tip where
 * nobody knows when that was.
 */
record Cover(double fromCm, double fromPart, double growthMonths) {
    static final double USUAL_TOUCH_UP_MONTHS = 3;

    private static final double LEFT_OUT_CM = 3;
    private static final int STEPS = 8;
    private static final double TO_THE_TIP = Double.POSITIVE_INFINITY;
    private static final List<Cover> ALL = List.of(new Cover(0, 0, TO_THE_TIP));
    private static final List<Cover> LENGTHS =
        steps(0, LEFT_OUT_CM).stream().map(cm -> new Cover(cm, 0, TO_THE_TIP)).toList();
    private static final List<Cover> ENDS = steps(0, 1).stream().map(part -> new Cover(0, part, TO_THE_TIP)).toList();

    /** @param touchUpMonths what may have grown before the first time */
    static List<Cover> of(Treatment t, double touchUpMonths) {
        return switch (t.zone()) {
            case LENGTHS_ENDS -> LENGTHS;
            case ENDS -> ENDS;
            case REGROWTH ->
                toTheTip(t) ? ALL : steps(1, touchUpMonths).stream().map(months -> new Cover(0, 0, months)).toList();
            default -> ALL;
        };
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

    boolean ends() {
        return growthMonths < TO_THE_TIP;
    }

    /** How far the scalp of the day of treatment must have got for its near edge to lie at this place. */
    double scalpAt(double cm, double lengthCm) {
        return (cm - fromPart * lengthCm) / (1 - fromPart) - fromCm;
    }
}
