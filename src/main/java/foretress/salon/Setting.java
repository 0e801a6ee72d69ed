package foretress.salon;

import foretress.questionnaire.Code;
import java.util.Arrays;

/** A figure of the policy that a salon may set more strictly, and which way that is. */
public enum Setting {
    /** Hours. */
    SKIN_TEST_WAIT_HOURS(true, 168),
    /** Months; 0 means that a test counts for one application, which is the strictest of all. */
    SKIN_TEST_VALIDITY_MONTHS(false, 12),
    /** Hours. */
    INCOMPATIBILITY_TEST_HOURS(true, 168),
    /** Years. */
    MINIMUM_AGE(true, 25),
    /** Years. */
    GUARDIAN_BELOW_AGE(true, 21),
    /** Weeks. */
    PERMED_HAIR_WEEKS(true, 104),
    /** Months. */
    CHEMOTHERAPY_MONTHS(true, 60),
    /** Weeks. */
    RADIOTHERAPY_WEEKS(true, 104),
    /** Weeks. */
    RELAXER_WEEKS(true, 104),
    /** Weeks. */
    KERATIN_WEEKS(true, 104),
    /** Months. */
    PERM_ALLERGEN_MONTHS(true, 24),
    /** Centimetres of new hair; 0 goes by months alone. */
    CHEMOTHERAPY_REGROWN_CM(true, 30),
    /** Months. */
    RETINOID_MONTHS(true, 60),
    /** Milligrams of prednisone a day up to which a skin test is believed. */
    STEROID_LOW_DOSE_MG(false, 80),
    /** 1 for yes: the stricter side. */
    STING_IS_A_REACTION(true, 1),
    /** 0 for no: the stricter side. */
    LETTER_COUNTS(false, 1),
    /** 0 for no: the stricter side. */
    LASH_TINT_ALLOWED(false, 1);

    private final boolean moreIsStricter;
    private final int most;

    Setting(boolean moreIsStricter, int most) {
        this.moreIsStricter = moreIsStricter;
        this.most = most;
    }

    /** The figure's name in a policy. */
    public String figure() {
        return Code.of(this);
    }

    /** The largest that is not taken for a slip of the finger. */
    public int most() {
        return most;
    }

    /** It is answered with yes (1) or no (0). */
    public boolean isYesOrNo() {
        return most == 1;
    }

    public boolean isMoreStricter() {
        return moreIsStricter;
    }

    boolean stricterThan(int own, int place) {
        return moreIsStricter ? own > place : own < place;
    }

    boolean laxerThan(int own, int place) {
        return stricterThan(place, own);
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
