package foretress.lexicon;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * CAS numbers with one digit damaged. The check digit tells that a number is damaged; what it was is known only where one number of
 * a substance we know is one slip away: a digit too many, too few, another, or two swapped; letters that look like digits are these.
 */
final class DamagedNumbers {
    private static final String D = "[0-9OolISsBbZzGg]";
    static final Pattern SHAPE = Pattern.compile(
        "(?<![\\p{L}0-9-])" + D + "{1,8}(?:-" + D + "{1,3}-(?:" + D + "{0,2}|\\p{L})|-" + D + "{1,4})(?![\\p{L}0-9-])");
    /** Of a number with both its hyphens, or else. */
    private static final int FEWEST_DIGITS = 4;
    private static final int FEWEST_WITHOUT_HYPHEN = 5;
    private static final int FEWEST_REAL_DIGITS = 3;

    private final Collection<String> known;

    DamagedNumbers(Collection<String> known) {
        this.known = known;
    }

    /** All it may be: the known ones a slip away from a damaged one, the known one of a sound one without its hyphens. */
    Set<String> all(String written) {
        String digits = digits(written);
        boolean hyphens = written.indexOf('-') < written.lastIndexOf('-');
        boolean number = digits.length() >= (hyphens ? FEWEST_DIGITS : FEWEST_WITHOUT_HYPHEN)
            && realDigits(written) >= FEWEST_REAL_DIGITS;
        Set<String> all = new LinkedHashSet<>();
        if (number && !sound(digits)) {
            known.stream().filter(cas -> Slips.between(digits, cas.replace("-", ""), 1) <= 1).forEach(all::add);
        }
        if (number && sound(digits)) {
            known.stream().filter(cas -> cas.replace("-", "").equals(digits)).forEach(all::add);
        }
        return all;
    }

    /** The check digit belongs to the others. */
    private static boolean sound(String digits) {
        return digits.charAt(0) != '0'
            && Cas.checkDigit(digits.substring(0, digits.length() - 1)) == digits.charAt(digits.length() - 1) - '0';
    }

    private static long realDigits(String written) {
        return written.chars().filter(c -> LookAlikes.digit((char) c)).count();
    }

    private static String digits(String written) {
        var digits = new StringBuilder();
        for (char c : written.toCharArray()) {
            switch (Character.toLowerCase(c)) {
                case 'o' -> digits.append('0');
                case 'l', 'i' -> digits.append('1');
                case 's' -> digits.append('5');
                case 'b' -> digits.append('8');
                case 'z' -> digits.append('2');
                case 'g' -> digits.append('9');
                case '-' -> {}
                default -> digits.append(c);
            }
        }
        return digits.toString();
    }
}
