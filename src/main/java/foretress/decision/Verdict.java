package foretress.decision;

import foretress.questionnaire.Code;
import java.util.Optional;

/** What can be decided about a service, from going ahead to not. */
public enum Verdict {
    PROCEED, PROCEED_WITH_CHANGES, POSTPONE, DECLINE;

    /** As forms and the store write it: {@code proceed-with-changes}. */
    public String code() {
        return Code.of(this);
    }

    public static Optional<Verdict> of(String code) {
        return Code.in(Verdict.class, code);
    }

    /** Whether the client's hair is worked on. */
    public boolean goesAhead() {
        return this == PROCEED || this == PROCEED_WITH_CHANGES;
    }
}
