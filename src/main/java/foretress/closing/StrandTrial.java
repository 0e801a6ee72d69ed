package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;

/** How the strand test at the chair came out; every service but a dry one is asked for it. */
public enum StrandTrial {
    GOOD, STOPPED, POOR, NOT_DONE;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** Empty for every other code, and for none. */
    static Optional<StrandTrial> of(String code) {
        return Code.in(StrandTrial.class, code);
    }
}
