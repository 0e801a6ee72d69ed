package foretress.skintest;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;

/** How long after the test something began. A week and more still counts: it may be an allergy the test itself started. */
public enum Onset {
    WITHIN_TWO_HOURS, SAME_DAY, NEXT_DAYS, WITHIN_A_WEEK, LATER, UNKNOWN;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** Empty for every other code, and for none. */
    static Optional<Onset> of(String code) {
        return Code.in(Onset.class, code);
    }
}
