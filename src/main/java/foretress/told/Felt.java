package foretress.told;

import com.fasterxml.jackson.annotation.JsonValue;
import foretress.questionnaire.Code;
import java.util.Optional;
import java.util.Set;

/** What a reaction did, by the options and in the order in which the questionnaire asks it of earlier ones: {@link #QUESTION}. */
public enum Felt {
    STING_RINSED, SORE, ITCHED_ON, ITCH_AFTER, SWELLING, BLISTERS, HIVES, NOSE, BREATHING, FAINT, OTHER;

    /** The question whose options these are. */
    public static final String QUESTION = "unsure-what";

    private static final Set<Felt> AT_ONCE = Set.of(SWELLING, HIVES, BREATHING, FAINT);

    /** As posted, stored, and answered. */
    @JsonValue
    public String code() {
        return Code.of(this);
    }

    /** It may become an ambulance matter, whatever else is ticked. */
    boolean isUrgent() {
        return AT_ONCE.contains(this);
    }

    /** Empty for every other code, and for none. */
    static Optional<Felt> of(String code) {
        return Code.in(Felt.class, code);
    }
}
