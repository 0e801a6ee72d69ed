package foretress.told;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;

/** When something that went wrong showed, counted from the moment the product went on. */
public enum Showed {
    WHILE_ON, TWO_HOURS, TWO_DAYS, LATER;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** Empty for every other code, and for none. */
    public static Optional<Showed> of(String code) {
        return Code.in(Showed.class, code);
    }
}
