package foretress.assessment;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** Facts, rules and services as one version of the knowledge has them, with what follows from them reckoned once. */
public final class RuleSet {
    private final List<FactDef> facts;
    private final KnownTreatments treatments;
    private final List<Rule> rules;
    private final List<Step> steps;
    private final List<Service> services;
    private final List<String> tests;
    private final Map<String, Source> sources;
    private final String hash;

    private final Map<String, FactDef> factsById;
    private final Map<String, Rule> rulesById;
    private final Map<String, Step> stepsById;
    private final Map<String, Service> servicesById;
    /** By step, the very object: what each rule weighs on it, in the order of the rules. */
    private final Map<Step, Map<Truth, Weight[]>> weights = new IdentityHashMap<>();
    /** The facts each rule reads, in the order of the rules. */
    private final List<List<String>> reads;

    /**
     * @param tests ids a rule may demand
     * @param hash SHA-256 of all knowledge files, in hex
     */
    public RuleSet(List<FactDef> facts, KnownTreatments treatments, List<Rule> rules, List<Step> steps,
        List<Service> services, List<String> tests,
        Map<String, Source> sources, String hash) {
        this.facts = List.copyOf(facts);
        this.treatments = treatments;
        this.rules = List.copyOf(rules);
        this.steps = List.copyOf(steps);
        this.services = List.copyOf(services);
        this.tests = List.copyOf(tests);
        this.sources = Map.copyOf(sources);
        this.hash = hash;
        this.factsById = byId(facts, FactDef::id);
        this.rulesById = byId(rules, Rule::id);
        this.stepsById = byId(steps, Step::id);
        this.servicesById = byId(services, Service::id);
        this.steps.forEach(step -> weights.put(step, reckoned(step)));
        this.reads = this.rules.stream().map(rule -> List.copyOf(rule.when().reads())).toList();
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> byId = new LinkedHashMap<>();
        all.forEach(one -> byId.putIfAbsent(id.apply(one), one));
        return byId;
    }

    private Map<Truth, Weight[]> reckoned(Step step) {
        Weight[] none = new Weight[rules.size()];
        Arrays.fill(none, Weight.NOTHING_FOUND);
        return new EnumMap<>(Map.of(Truth.FALSE, none, Truth.TRUE,
            rules.stream().map(rule -> rule.weightOn(step)).toArray(Weight[]::new),
            Truth.UNKNOWN, rules.stream().map(rule -> rule.unknownWeightOn(step)).toArray(Weight[]::new)));
    }

    /** What each rule weighs on a step when it comes out so, in the order of the rules; also for a step of a salon's own. */
    Weight[] weights(Step step, Truth truth) {
        Map<Truth, Weight[]> known = weights.get(step);
        return (known == null ? reckoned(step) : known).get(truth);
    }

    /** The facts a rule reads, by the rule's place in the list. */
    List<String> reads(int rule) {
        return reads.get(rule);
    }

    public List<FactDef> facts() {
        return facts;
    }

    public KnownTreatments treatments() {
        return treatments;
    }

    public List<Cue> cues() {
        return treatments.cues();
    }

    public List<Rule> rules() {
        return rules;
    }

    public List<Step> steps() {
        return steps;
    }

    public List<Service> services() {
        return services;
    }

    public List<String> tests() {
        return tests;
    }

    public Map<String, Source> sources() {
        return sources;
    }

    public String hash() {
        return hash;
    }

    public Optional<FactDef> fact(String id) {
        return Optional.ofNullable(factsById.get(id));
    }

    public Optional<Rule> rule(String id) {
        return Optional.ofNullable(rulesById.get(id));
    }

    public Optional<Service> service(String id) {
        return Optional.ofNullable(servicesById.get(id));
    }

    /**
     * What a service of the salon's own is for: the aims of every known service that it holds whole, or, where it holds none, of
     * those of which it has a step.
     */
    public List<String> aims(List<Step> steps) {
        List<String> whole = aims(service -> steps.containsAll(service.steps()));
        return whole.isEmpty() ? aims(service -> service.steps().stream().anyMatch(steps::contains)) : whole;
    }

    private List<String> aims(Predicate<Service> which) {
        return services().stream().filter(which).flatMap(service -> service.aims().stream()).distinct().toList();
    }

    public Optional<Step> step(String id) {
        return Optional.ofNullable(stepsById.get(id));
    }

    /** The services with these ids, in this order. */
    public List<Service> services(List<String> ids) {
        return ids.stream().map(servicesById::get).filter(Objects::nonNull).toList();
    }
}
