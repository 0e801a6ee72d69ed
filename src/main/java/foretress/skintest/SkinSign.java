package foretress.skintest;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be seen or felt after a skin test. The client and the staff go by the same list. */
public enum SkinSign {
    NONE, REDNESS, SWELLING, BURNING, BLISTERS, ITCH,
    /** Anywhere on the body but the spot. */
    ELSEWHERE,
    /** Face, lips, eyelids, tongue or throat swelling. */
    FACE,
    /** Trouble breathing, faintness, hives all over. */
    BREATHING,
    /** Staff only: no more than a faint redness, which dermatologists write "?+" (ICDRG scale, published tables). */
    FAINT;

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** An ambulance matter, whatever else is ticked. */
    public boolean isUrgent() {
        return this == FACE || this == BREATHING;
    }

    static Optional<SkinSign> of(String code) {
        return Arrays.stream(values()).filter(sign -> sign.code().equals(code)).findFirst();
    }
}
