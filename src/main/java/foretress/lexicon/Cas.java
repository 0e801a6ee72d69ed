package foretress.lexicon;

import java.util.regex.Pattern;

/**
 * A CAS Registry number. Its last digit checks the others: the sum of each digit times its place, counted from the right
 * without the check digit, modulo 10 (convention of the CAS Registry, from memory).
 */
public record Cas(String number) {
    static final Pattern SHAPE = Pattern.compile("[1-9][0-9]{1,6}-[0-9]{2}-[0-9]");

    public Cas {
        if (!valid(number)) {
            throw new IllegalArgumentException("not a CAS number, or misprinted: '%s'".formatted(number));
        }
    }

    public static boolean valid(String number) {
        return SHAPE.matcher(number).matches()
            && checkDigit(number.substring(0, number.length() - 2)) == number.charAt(number.length() - 1) - '0';
    }

    /** The check digit that belongs to the digits before it, hyphens or not. */
    static int checkDigit(String before) {
        String digits = before.replace("-", "");
        int sum = 0;
        for (int place = 1; place <= digits.length(); place++) {
            sum += place * (digits.charAt(digits.length() - place) - '0');
        }
        return sum % 10;
    }
}
