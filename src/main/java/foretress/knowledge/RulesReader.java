package foretress.knowledge;

import foretress.assessment.Condition;
import foretress.assessment.FactDef;
import foretress.assessment.Rule;
import foretress.assessment.Weight;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads the rules, one file a topic. */
final class RulesReader {
    /** What a rule may weigh: not "nothing found", which is no finding, nor "could not be assessed", which is a failure. */
    private static final Map<String, Weight> WEIGHTS = Weight.BY_CODE.entrySet().stream()
        .filter(e -> e.getValue() != Weight.NOTHING_FOUND && e.getValue() != Weight.COULD_NOT_BE_ASSESSED)
        .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));

    private final ConditionReader conditions;
    private final Set<String> weighable = new LinkedHashSet<>();
    private final ServicesReader services;
    private final Set<String> tests;
    private final Set<String> sources;
    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final Map<String, Yaml> places = new LinkedHashMap<>();

    RulesReader(Collection<FactDef> facts, ServicesReader services, Set<String> sources) {
        this.conditions = new ConditionReader(facts);
        this.services = services;
        this.weighable.addAll(services.chemistries());
        this.weighable.addAll(services.groups().keySet());
        this.weighable.addAll(services.steps().keySet());
        this.tests = services.tests();
        this.sources = sources;
    }

    /** A bare list of rules, or {@code rules: [...]}. */
    void read(Yaml file) {
        (file.isList() ? file : file.only("rules").at("rules")).each(this::rule);
    }

    private Rule rule(Yaml entry) {
        entry.only("id", "when", "weight", "if unknown", "demands", "read again", "word first", "source", "final",
            "call", "speaks");
        String id = IdSyntax.read(entry.at("id"));
        Map<String, Weight> weights = weights(entry.at("weight"));
        Optional<Weight> lighter = entry.maybe("if unknown").map(unknown -> lighter(unknown, weights.values()));
        List<String> demands =
            entry.maybe("demands").map(list -> list.each(t -> t.oneOf(tests, "test"))).orElse(List.of());
        var rule =
            new Rule(id, conditions.read(entry.at("when")), weights, lighter, demands, sources(entry.at("source")),
                entry.yes("final"), entry.yes("call"),
                entry.maybe("read again").map(days -> days.number(1, 14)).orElse(0),
                entry.yes("word first"), speaks(entry));
        places.put(id, entry);
        if (rules.putIfAbsent(id, rule) != null) {
            entry.at("id").complain("two rules are called '%s'".formatted(id));
        }
        return rule;
    }

    /** "always", or the condition under which its words are true. */
    private Optional<Condition> speaks(Yaml entry) {
        return entry.maybe("speaks").filter(said -> !said.text().equals("always")).map(conditions::read);
    }

    /** A rule that goes on into worse classes that others speak of says whether its words are still true there. */
    void checkVoices() {
        for (Rule rule : rules.values()) {
            Yaml entry = places.get(rule.id());
            if (entry.maybe("speaks").isEmpty()) {
                Voice.worseOf(rule, rules.values()).ifPresent(worse -> entry.at("when")
                    .complain(("this goes on into a worse class, of which '%s' speaks: "
                        + "say 'speaks: always' if its words are true there too, or 'speaks:' with the condition under which they are")
                        .formatted(worse.id())));
            }
        }
    }

    private Map<String, Weight> weights(Yaml map) {
        Map<String, Weight> weights = new LinkedHashMap<>();
        map.pairs().forEach(pair -> pair.getKey().trying(
            key -> weigh(key, pair.getValue().oneOf(WEIGHTS, "weight"), weights)));
        if (map.fields().isEmpty()) {
            map.complain("say what it weighs on: a chemistry or a step");
        }
        return weights;
    }

    /** A chemistry, a step, or a group of chemistries by its name: each of them once, so that nobody has to ask which weight counts. */
    private void weigh(Yaml key, Weight weight, Map<String, Weight> weights) {
        String name = key.oneOf(weighable, "chemistry or step");
        for (String one : services.members(name)) {
            if (weights.putIfAbsent(one, weight) != null) {
                key.complain("'%s' has a weight already".formatted(one));
            }
        }
    }

    private static Weight lighter(Yaml unknown, Collection<Weight> full) {
        Weight lighter = unknown.oneOf(WEIGHTS, "weight");
        Weight heaviest = Weight.heaviest(full);
        if (heaviest == Weight.PREVENTS && !lighter.atLeast(Weight.RESTRICTS)) {
            unknown.complain("a rule that prevents never weighs less than restricts, known or not");
        }
        if (lighter.atLeast(heaviest)) {
            unknown.complain("'%s' is not lighter than the rule's own weight; leave it out".formatted(lighter.code()));
        }
        return lighter;
    }

    private List<String> sources(Yaml keys) {
        return keys.listOrOne().stream().map(key -> key.oneOf(sources, "source")).toList();
    }

    List<Rule> rules() {
        return List.copyOf(rules.values());
    }
}
