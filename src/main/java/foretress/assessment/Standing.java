package foretress.assessment;

import java.util.List;

/**
 * Where a service stands.
 *
 * @param weight the heaviest weight on any of its steps
 * @param deciding ids of the rules that weigh that much
 * @param notAsked how many questions about this service were not put because another one is booked
 * @param unanswered how many required questions were put and not answered, whatever they are about
 */
public record Standing(String serviceId, Weight weight, List<String> deciding, int notAsked, int unanswered) {
    public Standing {
        deciding = List.copyOf(deciding);
    }

    /** Nothing was found, and everything that had to be asked was asked and answered. Only then may it be said. */
    public boolean nothingFound() {
        return weight == Weight.NOTHING_FOUND && notAsked == 0 && unanswered == 0;
    }
}
