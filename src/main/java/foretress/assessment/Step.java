package foretress.assessment;

import java.util.Set;

/** One step of a service, described by the chemistries it uses. */
public record Step(String id, Set<String> uses) {
    public Step {
        uses = Set.copyOf(uses);
    }
}
