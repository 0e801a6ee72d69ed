package foretress.lexicon;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Numbers of the Colour Index. They have no check digit: a damaged one is read only where one known number alone is one digit
 * away, and never where it is itself the number of another colorant of cosmetics.
 */
final class ColourIndex {
    private static final String PREFIX = "ci";
    private static final int DIGITS = 5;
    private static final Pattern DAMAGED_SIGN = Pattern.compile("(c[a-z]|[a-z]i|ic|[a-z]l|c)[0-9]{5}");

    /** Numbers of colorants allowed in cosmetics (Annex IV of Regulation (EC) 1223/2009), from memory. */
    private static final Set<String> OF_COSMETICS = Set.of(("""
        10006 10020 10316 11680 11710 11725 11920 12010 12085 12120 12370 12420 12480 12490 12700 13015 14270 14700 14720 14815
        15510 15525 15580 15620 15630 15800 15850 15865 15880 15980 15985 16035 16185 16230 16255 16290 17200 18050 18130 18690
        18736 18820 18965 19140 20040 20170 20470 21100 21108 21230 24790 26100 27290 27755 28440 40215 40800 40820 40825 40850
        42045 42051 42053 42080 42090 42100 42170 42510 42520 42735 44045 44090 45100 45190 45220 45350 45370 45380 45396 45405
        45410 45425 45430 47000 47005 50325 50420 51319 58000 59040 60724 60725 60730 61565 61570 61585 62045 69800 69825 71105
        73000 73015 73360 73385 73900 73915 74100 74160 74180 74260 75100 75120 75125 75130 75135 75170 75300 75470 75810 77000
        77002 77004 77007 77015 77120 77163 77220 77231 77266 77267 77288 77289 77346 77400 77480 77489 77491 77492 77499 77510
        77713 77742 77745 77820 77891 77947""").split("\\s+"));

    private final Map<String, Substance> byKey;

    ColourIndex(Map<String, Substance> byKey) {
        this.byKey = byKey;
    }

    /** "IC 16035", "Cy 19140": the letters are damaged and the number is sound. */
    private Optional<Substance> withDamagedSign(String key) {
        boolean sign = DAMAGED_SIGN.matcher(key).matches() && !key.startsWith(PREFIX);
        return sign ? Optional.ofNullable(byKey.get(PREFIX + key.substring(key.length() - DIGITS))) : Optional.empty();
    }

    /** All a damaged number may be; none where it is no such number, or a sound one. */
    Set<Substance> near(String key) {
        Optional<Substance> sound = withDamagedSign(key);
        if (sound.isPresent()) {
            return Set.of(sound.get());
        }
        String digits = digits(key);
        int missing = DIGITS - digits.length();
        boolean said = key.startsWith(PREFIX);
        if (Math.abs(missing) > 1 || !LabelToken.isNumber(digits) || !said && missing >= 0
            || OF_COSMETICS.contains(digits)) {
            return Set.of();
        }
        Set<Substance> all = new LinkedHashSet<>();
        candidates(digits, missing).stream().map(ci -> byKey.get(PREFIX + ci)).filter(s -> s != null).forEach(all::add);
        return all;
    }

    private static String digits(String key) {
        return key.startsWith(PREFIX) ? key.substring(PREFIX.length()) : key;
    }

    private static Set<String> candidates(String digits, int missing) {
        return missing == 0 ? withAnother(digits) : missing > 0 ? withOneMore(digits) : withoutADouble(digits);
    }

    private static Set<String> withAnother(String digits) {
        Set<String> all = new LinkedHashSet<>();
        for (int i = 0; i < digits.length(); i++) {
            for (char c = '0'; c <= '9'; c++) {
                all.add(digits.substring(0, i) + c + digits.substring(i + 1));
            }
            if (i > 0) {
                all.add(digits.substring(0, i - 1) + digits.charAt(i) + digits.charAt(i - 1) + digits.substring(i + 1));
            }
        }
        return all;
    }

    private static Set<String> withoutADouble(String digits) {
        Set<String> all = new LinkedHashSet<>();
        for (int i = 1; i < digits.length(); i++) {
            if (digits.charAt(i) == digits.charAt(i - 1)) {
                all.add(digits.substring(0, i) + digits.substring(i + 1));
            }
        }
        return all;
    }

    private static Set<String> withOneMore(String digits) {
        Set<String> all = new LinkedHashSet<>();
        for (int i = 0; i <= digits.length(); i++) {
            for (char c = '0'; c <= '9'; c++) {
                all.add(digits.substring(0, i) + c + digits.substring(i));
            }
        }
        return all;
    }
}
