package foretress.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/** What cannot be, or cannot be mixed, as measured: the reason and the values, so that a page can say it in its own words. */
public final class Impossible extends IllegalArgumentException {
    /** Why; the sentence takes the values in the order in which they are given. */
    public enum Reason {
        STRENGTH_OUT_OF_RANGE("A strength of %s %% is outside %s to %s %%. Read the bottle again."),
        VOLUME_OUT_OF_RANGE("%s ml is outside %s to %s ml. Choose another volume."),
        PARTS_OUT_OF_RANGE("1 : %s is outside 1 : %s to 1 : %s. Read the mixing instructions again."),
        STRONGER_THAN_STOCK("%s %% cannot be mixed from %s %%: water only weakens it. Take a stronger bottle."),
        REST_OUT_OF_RANGE("A rest length of %s mm is outside %s to %s mm. Measure again."),
        SHORTER_THAN_REST(
            "The stretched length (%s mm) is shorter than the rest length (%s mm). Measure again, or swap the two."),
        NOT_STRETCHED(
            "The stretched length (%s mm) is the rest length (%s mm), and the hair did not break. Pull to the mark."),
        STRETCHED_TOO_FAR(
            "The stretched length (%s mm) is more than twice the rest length (%s mm). No hair does that: measure again."),
        NOT_A_STRETCH("%s to %s cm is no stretch of hair. The far end lies beyond the near one."),
        TIME_OUT_OF_RANGE("%s minutes is outside %s to %s minutes.");

        private final String sentence;

        Reason(String sentence) {
            this.sentence = sentence;
        }
    }

    private final Reason reason;
    private final List<String> values;

    Impossible(Reason reason, double... values) {
        this(reason, Arrays.stream(values).mapToObj(Impossible::said).toList());
    }

    private Impossible(Reason reason, List<String> values) {
        super(reason.sentence.formatted(values.toArray()));
        this.reason = reason;
        this.values = values;
    }

    public Reason reason() {
        return reason;
    }

    /** The values as people write them: at most two decimals, none that says nothing. */
    public List<String> values() {
        return values;
    }

    private static String said(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal plain = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0).toPlainString() : plain.toPlainString();
    }

    static double within(Reason reason, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new Impossible(reason, value, least, most);
        }
        return value;
    }
}
