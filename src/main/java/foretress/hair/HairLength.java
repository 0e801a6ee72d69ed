package foretress.hair;

import java.util.OptionalDouble;

/**
 * Length of the longest hair, drawn gently straight, in cm from the scalp; above 0 and at most 300.
 *
 * @param cm empty when not known, or not drawn straight (a coil hides half)
 * @param measured staff measured it
 */
public record HairLength(OptionalDouble cm, boolean measured) {
    static final double LONGEST_CM = 300;

    public HairLength {
        if (cm.isPresent() && !(cm.getAsDouble() > 0 && cm.getAsDouble() <= LONGEST_CM)) {
            throw new IllegalArgumentException("not a length of hair: %s cm".formatted(cm.getAsDouble()));
        }
        if (cm.isEmpty() && measured) {
            throw new IllegalArgumentException("a measured length has a number");
        }
    }

    public static HairLength measured(double cm) {
        return new HairLength(OptionalDouble.of(cm), true);
    }

    public static HairLength said(double cm) {
        return new HairLength(OptionalDouble.of(cm), false);
    }

    public static HairLength notKnown() {
        return new HairLength(OptionalDouble.empty(), false);
    }
}
