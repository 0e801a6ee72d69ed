package foretress.assessment;

import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * A question that was not put because of the booked service.
 *
 * @param needs chemistries that would have it put: one of each set, its own and those of the questions that open it
 */
public record NotAsked(String question, List<Set<String>> needs) {
    public NotAsked {
        needs = needs.stream().map(Set::copyOf).toList();
    }

    /** Whether booking these chemistries would put the question. */
    public boolean putFor(Set<String> chemistries) {
        for (Set<String> some : needs) {
            if (Collections.disjoint(some, chemistries)) {
                return false;
            }
        }
        return true;
    }
}
