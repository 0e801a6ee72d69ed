package foretress.skintest;

import java.util.Arrays;
import java.util.Locale;

/** How long after the test something began. A week and more still counts: it may be an allergy the test itself started. */
public enum Began {
    WITHIN_TWO_HOURS, SAME_DAY, NEXT_DAYS, WITHIN_A_WEEK, LATER, UNKNOWN;

    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static boolean known(String code) {
        return Arrays.stream(values()).anyMatch(began -> began.code().equals(code));
    }
}
