package foretress.assessment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Facts, rules and services as one version of the knowledge has them.
 *
 * @param tests ids a rule may demand
 * @param hash SHA-256 of all knowledge files, in hex
 */
public record RuleSet(List<FactDef> facts, List<Cue> cues, List<Rule> rules, List<Step> steps, List<Service> services,
                      List<String> tests, Map<String, Source> sources, String hash) {
    public RuleSet {
        facts = List.copyOf(facts);
        cues = List.copyOf(cues);
        rules = List.copyOf(rules);
        steps = List.copyOf(steps);
        services = List.copyOf(services);
        tests = List.copyOf(tests);
        sources = Map.copyOf(sources);
    }

    public Optional<FactDef> fact(String id) {
        return facts.stream().filter(f -> f.id().equals(id)).findFirst();
    }

    public Optional<Rule> rule(String id) {
        return rules.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    public Optional<Service> service(String id) {
        return services.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    public Optional<Step> step(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The services with these ids, in this order. */
    public List<Service> services(List<String> ids) {
        Map<String, Service> byId = services.stream()
            .collect(Collectors.toMap(Service::id, Function.identity(), (a, b) -> a, LinkedHashMap::new));
        return ids.stream().map(byId::get).filter(java.util.Objects::nonNull).toList();
    }
}
