package foretress.day;

import foretress.assessment.Weight;
import java.util.Optional;

/**
 * One visit of the day.
 *
 * @param halt why it does not go on as booked, and by when to call; empty while it does
 * @param unsaid "Not answered", "Half answered"; blank once answered, which needs no word
 * @param left how long until it begins; blank where that is not pressing
 */
public record DayRow(String id, String hour, String client, String services, boolean over, Optional<Halt> halt,
    String unsaid, String left, Stand stand, Optional<Act> act) {
    /**
     * Where it stands.
     *
     * @param weight empty until everything was answered
     * @param because what weighs most, or what is owed
     * @param by until when; blank where there is no such moment
     */
    public record Stand(Optional<Weight> weight, String word, String because, String by) {}

    public record Halt(String word, String why, String by) {}

    /** The one thing to do now: a page to open, a number to dial, or ({@code posted}) something to send. */
    public record Act(String words, String address, boolean posted, Look look) {}

    /** How loud an act is: the main one of the page, one that presses, any other. */
    public enum Look {
        MAIN, LOUD, PLAIN
    }

    public boolean isStopped() {
        return halt.isPresent();
    }

    public boolean isUnanswered() {
        return halt.isEmpty() && !unsaid.isEmpty();
    }
}
