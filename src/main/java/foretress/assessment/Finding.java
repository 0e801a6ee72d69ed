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
 * @param silentOn steps on which it weighs and demands like any other, but a heavier finding on the same fact speaks for it; none in
 *     a finding kept before there was such a thing
 * @param read the typed or copied words that decided it; none in a finding kept before they were noted
 */
public record Finding(String ruleId, Weight weight, Map<String, Weight> byStep, List<String> causes, List<String> facts,
    List<String> demands, List<String> sources, boolean onlyIfUnknown, List<String> silentOn, List<ReadAs> read) {
    public Finding {
        byStep = Collections.unmodifiableMap(new LinkedHashMap<>(byStep));
        causes = List.copyOf(causes);
        facts = List.copyOf(facts);
        demands = List.copyOf(demands);
        sources = List.copyOf(sources);
        read = read == null ? List.of() : List.copyOf(read);
        silentOn = silentOn == null ? List.of() : List.copyOf(silentOn);
    }

    Finding silentOn(List<String> steps) {
        return new Finding(ruleId, weight, byStep, causes, facts, demands, sources, onlyIfUnknown, steps, read);
    }

    /** Whether its words are shown where one of these services is looked at. */
    public boolean speaksOn(List<Service> services) {
        return services.stream().flatMap(service -> service.steps().stream()).anyMatch(this::speaksOn);
    }

    /** Whether it touches this step, and no heavier finding speaks for it there. */
    public boolean speaksOn(Step step) {
        return byStep.containsKey(step.id()) && !silentOn.contains(step.id());
    }

    /** Whether its words are shown anywhere. */
    public boolean speaks() {
        return !silentOn.containsAll(byStep.keySet());
    }

    public String source() {
        return sources.get(0);
    }

    /** What it weighs on a service: the heaviest over its steps. */
    public Weight on(Service service) {
        Weight heaviest = Weight.NOTHING_FOUND;
        for (Step step : service.steps()) {
            heaviest = heaviest.heavier(byStep.getOrDefault(step.id(), Weight.NOTHING_FOUND));
        }
        return heaviest;
    }
}
