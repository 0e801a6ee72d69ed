package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;

/** Where a product went. */
public enum AppliedTo {
    REGROWTH, LENGTHS_ENDS, ENDS, WHOLE, STRANDS, BROWS_LASHES;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** Empty for every other code, and for none. */
    static Optional<AppliedTo> of(String code) {
        return Code.in(AppliedTo.class, code);
    }
}
