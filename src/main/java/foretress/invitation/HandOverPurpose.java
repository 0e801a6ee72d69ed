package foretress.invitation;

import java.util.UUID;

/** What a member of staff hands the salon's tablet to the client for. */
public enum HandOverPurpose {
    /** To sign again at the chair; the birth date is asked as at any door. */
    TO_SIGN("/answers", "/visits/%s/decision"),
    /** To sign the consent to a skin test, and to see nothing else. */
    FOR_SKIN_TEST("/answers/skin-test", "/visits/%s/skin-test/record"),
    /** To answer everything here and now. */
    WALK_IN("/answers", "/desk/visits/%s");

    private final String reach;
    private final String after;

    HandOverPurpose(String reach, String after) {
        this.reach = reach;
        this.after = after;
    }

    /** Where the client begins, and the only pages under which the tablet opens anything. */
    public String reach() {
        return reach;
    }

    /** Where staff go on who took the tablet back and signed in. */
    String after(UUID visit) {
        return after.formatted(visit);
    }
}
