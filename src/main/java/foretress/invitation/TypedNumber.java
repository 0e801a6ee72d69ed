package foretress.invitation;

import java.util.OptionalInt;

/** Numbers typed in the digits of any script. */
final class TypedNumber {
    private TypedNumber() {}

    /** The number of up to nine digits, or empty when anything but digits (and space around them) was typed. */
    static OptionalInt number(String typed) {
        String ascii = ascii(typed.strip());
        return ascii.matches("[0-9]{1,9}") ? OptionalInt.of(Integer.parseInt(ascii)) : OptionalInt.empty();
    }

    /** The same text with every decimal digit of Unicode (category Nd) as 0 to 9. */
    static String ascii(String typed) {
        var out = new StringBuilder();
        typed.codePoints().forEach(c -> out.appendCodePoint(isDigit(c) ? '0' + Character.digit(c, 10) : c));
        return out.toString();
    }

    private static boolean isDigit(int codePoint) {
        return Character.getType(codePoint) == Character.DECIMAL_DIGIT_NUMBER;
    }
}
