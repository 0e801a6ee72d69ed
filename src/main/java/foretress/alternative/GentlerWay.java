package foretress.alternative;

import foretress.assessment.Weight;

/**
 * A service that reaches what was booked, in words. What is absent is an empty text.
 *
 * @param service its id
 * @param unsaid nothing much weighs on it, but not everything was asked
 * @param because the heaviest reason, where one restricts or more
 * @param can what it can do on this hair, {@code cannot} what it cannot
 * @param owes the tests that come first; empty when none does
 * @param earliest when it could be done at the earliest; empty when nobody can say
 */
public record GentlerWay(String service, String name, Weight weight, String word, boolean unsaid, String because,
    String can,
    String cannot, String lasts, String owes, String earliest) {
    /** It is off as things stand. */
    public boolean off() {
        return weight.atLeast(Weight.COULD_NOT_BE_ASSESSED);
    }
}
