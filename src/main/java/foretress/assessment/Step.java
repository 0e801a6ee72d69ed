package foretress.assessment;

import java.util.HashSet;
import java.util.Set;

/**
 * One step of a service, described by the chemistries it uses.
 *
 * @param removable a stylist may take it out of a service by name
 */
public record Step(String id, Set<String> uses, boolean removable, Afterwards afterwards) {
    public Step {
        uses = Set.copyOf(uses);
    }

    /** A step that belongs to its service and of which nothing is known afterwards. */
    public Step(String id, Set<String> uses) {
        this(id, uses, false, Afterwards.NOTHING);
    }

    /** The same step with one chemistry in the place of another, where it uses that. */
    Step using(String general, String kind) {
        Set<String> named = new HashSet<>(uses);
        return named.remove(general) && named.add(kind) ? new Step(id, named, removable, afterwards) : this;
    }
}
