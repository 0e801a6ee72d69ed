package foretress.knowledge;

import java.util.Locale;

/**
 * The form a word takes beside a whole number, named as CLDR names it. The rules are those of CLDR 46, plurals.xml, for the six
 * languages, as far as whole numbers up to a thousand go: "many" of Spanish and French begins at a million.
 */
public enum PluralForm {
    ZERO, ONE, TWO, FEW, MANY, OTHER;

    private static final int HUNDRED = 100;

    /** @param count 0 or more; a language that is not ours has one form for all */
    public static PluralForm of(String language, int count) {
        return switch (language) {
            case "en", "es" -> count == 1 ? ONE : OTHER;
            case "fr" -> count < 2 ? ONE : OTHER;
            case "pl" -> polish(count);
            case "ar" -> arabic(count);
            default -> OTHER;
        };
    }

    /** One: 1. Few: ends in 2 to 4, but not in 12 to 14. Many: every other. */
    private static PluralForm polish(int count) {
        boolean teen = within(count % HUNDRED, 12, 14);
        return count == 1 ? ONE : within(count % 10, 2, 4) && !teen ? FEW : MANY;
    }

    /** Zero: 0. One: 1. Two: 2. Few: ends in 03 to 10. Many: ends in 11 to 99. Other: 100 to 102, 200 to 202 and so on. */
    private static PluralForm arabic(int count) {
        if (count <= 2) {
            return values()[count];
        }
        int end = count % HUNDRED;
        return within(end, 3, 10) ? FEW : within(end, 11, 99) ? MANY : OTHER;
    }

    private static boolean within(int value, int least, int most) {
        return value >= least && value <= most;
    }

    /** As a sentence names it: "few". */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
