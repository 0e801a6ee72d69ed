package foretress.told;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** When something that went wrong showed, counted from the moment the product went on. */
public enum Showed {
    WHILE_ON, TWO_HOURS, TWO_DAYS, LATER;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Empty for every other code, and for none. */
    public static Optional<Showed> of(String code) {
        return Arrays.stream(values()).filter(one -> one.code().equals(code)).findFirst();
    }
}
