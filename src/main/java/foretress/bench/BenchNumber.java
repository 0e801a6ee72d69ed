package foretress.bench;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Numbers as a thumb types them and as a screen shows them. */
public final class BenchNumber {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,5}([.,][0-9]{1,3})?");

    private BenchNumber() {}

    /** With a point or a comma; empty for what is no number, below 0 included. */
    public static OptionalDouble read(String typed) {
        String plain = Normalizer.normalize(typed, Normalizer.Form.NFKC).strip();
        return NUMBER.matcher(plain).matches() ? OptionalDouble.of(Double.parseDouble(plain.replace(',', '.')))
            : OptionalDouble.empty();
    }

    /** At most one decimal, and none that says nothing. */
    public static String say(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0).toPlainString() : rounded.toPlainString();
    }

    /** Minutes and seconds: 18:42. */
    static String clock(long seconds) {
        return "%02d:%02d".formatted(seconds / 60, seconds % 60);
    }
}
