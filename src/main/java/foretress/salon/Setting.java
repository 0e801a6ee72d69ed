package foretress.salon;

import java.util.Arrays;
import java.util.Locale;

/** A figure of the policy that a salon may set more strictly than its law, and which way that is. */
public enum Setting {
    /** Hours. */
    SKIN_TEST_WAIT_HOURS(true, 168),
    /** Months; 0 means that a test counts for one application, which is the strictest of all. */
    SKIN_TEST_VALIDITY_MONTHS(false, 12),
    /** Hours. */
    INCOMPATIBILITY_TEST_HOURS(true, 168),
    /** Years. */
    MINIMUM_AGE(true, 25),
    /** Weeks. */
    PERMED_HAIR_WEEKS(true, 104),
    /** Months. */
    CHEMOTHERAPY_MONTHS(true, 60),
    /** Weeks. */
    RADIOTHERAPY_WEEKS(true, 104);

    private final boolean moreIsStricter;
    private final int most;

    Setting(boolean moreIsStricter, int most) {
        this.moreIsStricter = moreIsStricter;
        this.most = most;
    }

    /** The figure's name in a policy. */
    public String figure() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The largest that is not taken for a slip of the finger. */
    public int most() {
        return most;
    }

    public boolean isMoreStricter() {
        return moreIsStricter;
    }

    boolean stricterThan(int own, int law) {
        return moreIsStricter ? own > law : own < law;
    }

    boolean laxerThan(int own, int law) {
        return stricterThan(law, own);
    }

    int stricter(int one, int other) {
        return moreIsStricter ? Math.max(one, other) : Math.min(one, other);
    }

    static boolean known(String figure) {
        return Arrays.stream(values()).anyMatch(setting -> setting.figure().equals(figure));
    }

    static Setting of(String figure) {
        return Arrays.stream(values()).filter(setting -> setting.figure().equals(figure)).findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no salon sets " + figure));
    }
}
