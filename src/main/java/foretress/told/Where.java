package foretress.told;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;

/** Where a reaction is; what has no place, such as feeling faint, is nowhere. */
public enum Where {
    SCALP, EDGE, FACE, BODY;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** Empty for every other code, and for none. */
    static Optional<Where> of(String code) {
        return Code.in(Where.class, code);
    }
}
