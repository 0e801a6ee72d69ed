package foretress.told;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where a reaction is; what has no place, such as feeling faint, is nowhere. */
public enum Where {
    SCALP, EDGE, FACE, BODY;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Empty for every other code, and for none. */
    static Optional<Where> of(String code) {
        return Arrays.stream(values()).filter(where -> where.code().equals(code)).findFirst();
    }
}
