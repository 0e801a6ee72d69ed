package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;

/** How a service went. */
public enum Course {
    AS_PLANNED, CHANGED, STOPPED, NOT_DONE;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** Empty for every other code, and for none. */
    static Optional<Course> of(String code) {
        return Code.in(Course.class, code);
    }
}
