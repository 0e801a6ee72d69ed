package foretress.closing;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can go wrong at a service, in the order in which it is asked; the first nine are the skin's and the body's. */
public enum Mishap {
    STING("sting-rinsed"), SORE("sore"), ITCH("itch-after"), SWELLING("swelling"), BLISTERS("blisters"),
    HIVES("hives"), BREATHING("breathing"), UNWELL("faint"), SKIN("other"),
    BREAKAGE(""), HEAT(""), COLOUR(""), OTHER("");

    private final String told;

    Mishap(String told) {
        this.told = told;
    }

    /** As posted and stored. */
    @JsonValue
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The answer by which a client would tell it of a reaction; empty for what is none. */
    Optional<String> asTold() {
        return Optional.of(told).filter(code -> !code.isEmpty());
    }

    /** Empty for every other code, and for none. */
    static Optional<Mishap> of(String code) {
        return Arrays.stream(values()).filter(mishap -> mishap.code().equals(code)).findFirst();
    }
}
