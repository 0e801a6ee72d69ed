package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How a service went. */
public enum Course {
    AS_PLANNED, CHANGED, STOPPED, NOT_DONE;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Empty for every other code, and for none. */
    static Optional<Course> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }
}
