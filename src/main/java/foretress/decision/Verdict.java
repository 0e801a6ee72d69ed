package foretress.decision;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What can be decided about a service, from going ahead to not. */
public enum Verdict {
    PROCEED, PROCEED_WITH_CHANGES, POSTPONE, DECLINE;

    /** As forms and the store write it: {@code proceed-with-changes}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Verdict> of(String code) {
        return Arrays.stream(values()).filter(verdict -> verdict.code().equals(code)).findFirst();
    }

    /** Whether the client's hair is worked on. */
    public boolean goesAhead() {
        return this == PROCEED || this == PROCEED_WITH_CHANGES;
    }
}
