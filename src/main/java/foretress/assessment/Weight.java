package foretress.assessment;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How heavily a finding weighs on a service, light to heavy: the order of the constants is the order of the weights. */
public enum Weight {
    NOTHING_FOUND, NOTE, RESTRICTS, TEST_FIRST, COULD_NOT_BE_ASSESSED, PREVENTS;

    /** Every weight by its code. */
    public static final Map<String, Weight> BY_CODE =
        Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Weight::code, Function.identity()));

    /** The weight as data files write it: {@code could not be assessed}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * @throws IllegalArgumentException if no weight is written so
     */
    public static Weight ofCode(String code) {
        for (Weight weight : values()) {
            if (weight.code().equals(code)) {
                return weight;
            }
        }
        throw new IllegalArgumentException("not a weight: '" + code + "'");
    }

    public boolean atLeast(Weight other) {
        return compareTo(other) >= 0;
    }

    public Weight heavier(Weight other) {
        return atLeast(other) ? this : other;
    }

    public Weight lighter(Weight other) {
        return atLeast(other) ? other : this;
    }

    /** The heaviest; nothing found when there are none. */
    public static Weight heaviest(Collection<Weight> weights) {
        Weight heaviest = NOTHING_FOUND;
        for (Weight weight : weights) {
            heaviest = heaviest.heavier(weight);
        }
        return heaviest;
    }
}
