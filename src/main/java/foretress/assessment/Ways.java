package foretress.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How what a client comes for can be reached, and what each service can do on the hair as far as it is known. None of it weighs:
 * where a service stands, the rules say.
 *
 * @param byAim the services that reach an aim, the gentlest first
 * @param rather where hair turns that order round
 * @param does what a service does, by its id; nothing is known of a salon's own
 * @param holdsBack what keeps a service from lifting as far as it could
 * @param heals facts that mend by themselves
 * @param recovers facts that mend by care, or once that hair is cut off
 */
public record Ways(Map<String, List<String>> byAim, List<Rather> rather, Map<String, Does> does,
    List<HeldBack> holdsBack, Set<String> heals, Set<String> recovers) {
    public static final Ways NONE = new Ways(Map.of(), List.of(), Map.of(), List.of(), Set.of(), Set.of());

    public Ways {
        byAim = Map.copyOf(byAim);
        rather = List.copyOf(rather);
        does = Map.copyOf(does);
        holdsBack = List.copyOf(holdsBack);
        heals = Set.copyOf(heals);
        recovers = Set.copyOf(recovers);
    }

    /** While the condition may hold, one service comes right before another. */
    public record Rather(String aim, Condition when, String take, String than) {
        void turn(List<String> order, Facts facts) {
            if (when.of(facts) != Truth.FALSE && order.remove(take)) {
                order.add(order.indexOf(than), take);
            }
        }
    }

    /**
     * @param grey what it does to grey hair, as a code; empty where that is not what it is for
     * @param lifts levels of ten on sound natural hair, at most
     * @param lasts how long, as a code
     */
    public record Does(Optional<String> grey, int lifts, String lasts, List<String> sources) {}

    /** @param none it lifts no level; otherwise nobody can tell how far before a tuft was cut */
    public record HeldBack(String id, Condition when, Set<String> on, boolean none) {
        boolean holds(Service service, Facts facts) {
            return service.stepIds().stream().anyMatch(on::contains) && when.of(facts) != Truth.FALSE;
        }
    }

    /**
     * How far a service lifts this hair.
     *
     * @param levels at most; of no meaning while something holds it back
     */
    public record Lift(int levels, Optional<HeldBack> by) {}

    /** The services that reach any of these aims on this hair, the gentlest first. */
    public List<String> to(List<String> aims, Facts facts) {
        return aims.stream().flatMap(aim -> order(aim, facts).stream()).distinct().toList();
    }

    private List<String> order(String aim, Facts facts) {
        List<String> order = new ArrayList<>(byAim.getOrDefault(aim, List.of()));
        rather.stream().filter(turned -> turned.aim().equals(aim)).forEach(turned -> turned.turn(order, facts));
        return order;
    }

    /** Empty for a service that lifts nothing anyway. What may hold it back holds it back: not knowing never lifts a level. */
    public Optional<Lift> lift(Service service, Facts facts) {
        int levels = Optional.ofNullable(does.get(service.id())).map(Does::lifts).orElse(0);
        Optional<HeldBack> none = held(service, facts, true);
        return levels == 0 ? Optional.empty()
            : Optional.of(new Lift(levels, none.isPresent() ? none : held(service, facts, false)));
    }

    private Optional<HeldBack> held(Service service, Facts facts, boolean none) {
        return holdsBack.stream().filter(held -> held.none() == none && held.holds(service, facts)).findFirst();
    }
}
