package foretress.hair;

import java.time.LocalDate;

/** On that day all hair was cut to this length in cm. A trim of unknown size shortens nothing and is not a Cut. */
public record Cut(LocalDate day, double toCm) {
    public Cut {
        if (!(toCm >= 0)) {
            throw new IllegalArgumentException("cannot cut to %s cm".formatted(toCm));
        }
    }
}
