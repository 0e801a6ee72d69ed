package foretress.visit;

import java.util.EnumSet;
import java.util.Set;

/** How far a visit has come. Only the steps listed here exist; everything else is refused. */
public enum State {
    BOOKED, INVITED, ANSWERING, SIGNED, DECIDED, CLOSED, CANCELLED, WITHDRAWN;

    /**
     * The states that may follow this one. Answers may be changed until the decision, so a signed visit goes back to
     * answering; a decision reopened by a fresh signature goes back to signed. A visit can be put off or declined before
     * anything is signed. Consent can be withdrawn once it was
     * given, also after the visit is closed; a visit that took place can no longer be cancelled.
     */
    public Set<State> next() {
        return switch (this) {
            case BOOKED -> EnumSet.of(INVITED, CANCELLED);
            case INVITED -> EnumSet.of(ANSWERING, CANCELLED);
            case ANSWERING -> EnumSet.of(SIGNED, DECIDED, CANCELLED, WITHDRAWN);
            case SIGNED -> EnumSet.of(ANSWERING, DECIDED, CANCELLED, WITHDRAWN);
            case DECIDED -> EnumSet.of(SIGNED, CLOSED, CANCELLED, WITHDRAWN);
            case CLOSED -> EnumSet.of(WITHDRAWN);
            case CANCELLED, WITHDRAWN -> EnumSet.noneOf(State.class);
        };
    }

    public boolean mayBecome(State next) {
        return next().contains(next);
    }

    /** Whether the client may still answer or change an answer. */
    public boolean takesAnswers() {
        return this == INVITED || this == ANSWERING || this == SIGNED;
    }

    /** Whether the client has begun. */
    public boolean hasAnswers() {
        return mayHoldAnswers() && this != CANCELLED;
    }

    /** Whether there may be answers to protect: one called off can have been answered before. */
    public boolean mayHoldAnswers() {
        return this != BOOKED && this != INVITED;
    }

    /** Whether the service took place and consent still stands: something may be told of it. */
    public boolean tookPlace() {
        return this == CLOSED;
    }

    /** Whether anything is still to happen at this visit. */
    public boolean isAhead() {
        return this != CLOSED && this != CANCELLED && this != WITHDRAWN;
    }
}
