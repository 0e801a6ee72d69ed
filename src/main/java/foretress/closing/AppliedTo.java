package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where a product went. */
public enum AppliedTo {
    REGROWTH, LENGTHS_ENDS, ENDS, WHOLE, STRANDS, BROWS_LASHES;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Empty for every other code, and for none. */
    static Optional<AppliedTo> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }
}
