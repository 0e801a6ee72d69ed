package foretress.assessment;

import java.util.Locale;

/** How heavily a finding weighs on a service, light to heavy: the order of the constants is the order of the weights. */
public enum Weight {
    NOTHING_FOUND, NOTE, RESTRICTS, TEST_FIRST, COULD_NOT_BE_ASSESSED, PREVENTS;

    /** The weight as data files write it: {@code could not be assessed}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * @throws IllegalArgumentException if no weight is written so
     */
    public static Weight ofCode(String code) {
        for (var weight : values()) {
            if (weight.code().equals(code)) {
                return weight;
            }
        }
        throw new IllegalArgumentException("not a weight: '" + code + "'");
    }

    public Weight heavier(Weight other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
