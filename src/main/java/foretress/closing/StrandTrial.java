package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How the strand test at the chair came out; every service but a dry one is asked for it. */
public enum StrandTrial {
    GOOD, STOPPED, POOR, NOT_DONE;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Empty for every other code, and for none. */
    static Optional<StrandTrial> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }
}
