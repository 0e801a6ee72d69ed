package foretress.assessment;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A service as offered or booked: its steps in order. */
public record Service(String id, List<Step> steps) {
    public Service {
        steps = List.copyOf(steps);
    }

    public Set<String> chemistries() {
        return steps.stream().flatMap(s -> s.uses().stream()).collect(Collectors.toUnmodifiableSet());
    }

    public List<String> stepIds() {
        return steps.stream().map(Step::id).toList();
    }

    /**
     * The same service with only these of its steps: what a stylist took out by name is gone. Where nothing would be left, or a
     * step is none of its own, the booking was made under other knowledge, and nothing counts as taken out.
     */
    public Service keeping(Collection<String> kept) {
        boolean ours = !kept.isEmpty() && stepIds().containsAll(kept);
        return ours ? new Service(id, steps.stream().filter(s -> kept.contains(s.id())).toList()) : this;
    }
}
