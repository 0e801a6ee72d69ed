package foretress.assessment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One thing the answers or tests say.
 *
 * @param weight the heaviest it weighs on any step
 * @param byStep its weight on every step it touches, by step id
 * @param causes questions whose answers decided it
 * @param facts facts that decided it
 * @param demands ids of the tests it asks for
 * @param sources keys of the rule set's sources
 * @param onlyIfUnknown it may hold, and is not known to
 */
public record Finding(String ruleId, Weight weight, Map<String, Weight> byStep, List<String> causes, List<String> facts,
                      List<String> demands, List<String> sources, boolean onlyIfUnknown) {
    public Finding {
        byStep = Collections.unmodifiableMap(new LinkedHashMap<>(byStep));
        causes = List.copyOf(causes);
        facts = List.copyOf(facts);
        demands = List.copyOf(demands);
        sources = List.copyOf(sources);
    }

    public String source() {
        return sources.get(0);
    }

    /** What it weighs on a service: the heaviest over its steps. */
    public Weight on(Service service) {
        return Weight.heaviest(service.stepIds().stream().map(s -> byStep.getOrDefault(s, Weight.NOTHING_FOUND)).toList());
    }
}
