package foretress.questionnaire;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;

/** Numbers as people type them, in the decimal digits of any script (Unicode category Nd), full-width ones too. */
public final class Digits {
    private static final int MOST_DIGITS = 6;
    private static final String POINTS = ".,\u066B\uFF0E\uFF0C";

    private Digits() {}

    /** A whole number of at most six digits without a sign; anything else is none. */
    static OptionalInt whole(String typed) {
        String plain = plain(typed.strip());
        return plain.matches("[0-9]{1,%d}".formatted(MOST_DIGITS)) ? OptionalInt.of(Integer.parseInt(plain))
            : OptionalInt.empty();
    }

    /** A number with at most three places after one decimal point or comma; anything else is none. */
    static Optional<BigDecimal> decimal(String typed) {
        String plain = plain(typed.strip());
        return plain.matches("[0-9]{1,%d}([.][0-9]{1,3})?".formatted(MOST_DIGITS)) ? Optional.of(new BigDecimal(plain))
            : Optional.empty();
    }

    /** The same text with digits of every script as 0 to 9, and each decimal comma or point as a point. */
    public static String plain(String typed) {
        var plain = new StringBuilder();
        typed.codePoints().forEach(letter -> {
            if (Character.getType(letter) == Character.DECIMAL_DIGIT_NUMBER) {
                plain.append(Character.digit(letter, 10));
            } else {
                plain.appendCodePoint(POINTS.indexOf(letter) >= 0 ? '.' : letter);
            }
        });
        return plain.toString();
    }
}
