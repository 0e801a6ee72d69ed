package foretress.assessment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A service as offered or booked: its steps in order.
 *
 * @param aims what a client comes to it for, the foremost first; empty where nobody said
 */
public record Service(String id, List<Step> steps, Placing placing, List<String> aims) {
    public Service {
        steps = List.copyOf(steps);
        aims = List.copyOf(aims);
    }

    /** A service of which nobody said where on the hair it goes, nor what for. */
    public Service(String id, List<Step> steps) {
        this(id, steps, Placing.ANYWHERE, List.of());
    }

    public Set<String> chemistries() {
        return steps.stream().flatMap(s -> s.uses().stream()).collect(Collectors.toUnmodifiableSet());
    }

    public List<String> stepIds() {
        return steps.stream().map(Step::id).toList();
    }

    /** The step a stylist may take out by name; empty when there is none, or nothing else beside it. */
    public Optional<Step> removable() {
        return steps.stream().filter(step -> step.removable() && steps.size() > 1).findFirst();
    }

    /** The same service without the step that can be taken out. */
    public Service plain() {
        return keeping(steps.stream().filter(step -> !removable().equals(Optional.of(step))).map(Step::id).toList());
    }

    /** The same service with one chemistry in the place of another, wherever a step uses that. */
    Service using(String general, String kind) {
        return new Service(id, steps.stream().map(step -> step.using(general, kind)).toList(), placing, aims);
    }

    /**
     * The same service with only these of its steps: what a stylist took out by name is gone. Where nothing would be left, or a
     * step is none of its own, the booking was made under other knowledge, and nothing counts as taken out.
     */
    public Service keeping(Collection<String> kept) {
        boolean ours = !kept.isEmpty() && stepIds().containsAll(kept);
        return ours ? new Service(id, steps.stream().filter(s -> kept.contains(s.id())).toList(), placing, aims)
            : this;
    }
}
