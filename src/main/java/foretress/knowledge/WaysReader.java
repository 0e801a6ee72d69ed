package foretress.knowledge;

import foretress.assessment.FactDef;
import foretress.assessment.Service;
import foretress.assessment.Ways;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Reads how each aim is reached, and what each service does. */
final class WaysReader {
    private static final int MOST_LEVELS = 10;
    private static final Map<String, Boolean> LIFTS_NONE = Map.of("none", true, "unsure", false);

    private final ServicesReader known;
    private final Set<String> services;
    private final Set<String> facts;
    private final Set<String> sources;
    private final ConditionReader conditions;

    WaysReader(ServicesReader known, Collection<FactDef> facts, Set<String> sources) {
        this.known = known;
        this.services = known.services().stream().map(Service::id).collect(Collectors.toSet());
        this.facts = facts.stream().map(FactDef::id).collect(Collectors.toSet());
        this.sources = sources;
        this.conditions = new ConditionReader(facts);
    }

    Ways read(Yaml file) {
        file.only("ways", "rather", "does", "holds-back", "mends");
        Map<String, List<String>> byAim = byAim(file.at("ways"));
        Map<String, Ways.Does> does = does(file.at("does"));
        Yaml mends = file.at("mends").only("heals", "recovers");
        return new Ways(byAim, file.at("rather").each(entry -> rather(entry, byAim)), does,
            file.at("holds-back").each(this::heldBack), mending(mends.at("heals")), mending(mends.at("recovers")));
    }

    private Set<String> mending(Yaml list) {
        return new LinkedHashSet<>(list.each(fact -> fact.oneOf(facts, "fact")));
    }

    private Map<String, List<String>> byAim(Yaml section) {
        Map<String, List<String>> byAim = new LinkedHashMap<>();
        section.pairs().forEach(pair -> pair.getKey().trying(key -> byAim.put(key.oneOf(known.aims(), "aim"),
            pair.getValue().each(service -> service.oneOf(services, "service")))));
        known.services().forEach(service -> service.aims().stream()
            .filter(aim -> !byAim.getOrDefault(aim, List.of()).contains(service.id())).forEach(aim -> section
                .complain("'%s' is for '%s' and does not stand among its ways".formatted(service.id(), aim))));
        return byAim;
    }

    private Map<String, Ways.Does> does(Yaml section) {
        Map<String, Ways.Does> does = new LinkedHashMap<>();
        section.pairs().forEach(
            pair -> pair.getKey().trying(key -> does.put(key.oneOf(services, "service"), done(pair.getValue()))));
        known.services().stream().map(Service::id).filter(id -> !does.containsKey(id))
            .forEach(id -> section.complain("nothing says what '%s' does".formatted(id)));
        return does;
    }

    private Ways.Does done(Yaml entry) {
        entry.only("grey", "lifts", "lasts", "source");
        return new Ways.Does(entry.maybe("grey").map(IdSyntax::read),
            entry.maybe("lifts").map(levels -> levels.number(1, MOST_LEVELS)).orElse(0),
            IdSyntax.read(entry.at("lasts")), sources(entry.at("source")));
    }

    private Ways.Rather rather(Yaml entry, Map<String, List<String>> byAim) {
        entry.only("aim", "when", "take", "rather-than", "source");
        String aim = entry.at("aim").oneOf(known.aims(), "aim");
        List<String> ways = byAim.getOrDefault(aim, List.of());
        sources(entry.at("source"));
        return new Ways.Rather(aim, conditions.read(entry.at("when")), entry.at("take").oneOf(ways, "way"),
            entry.at("rather-than").oneOf(ways, "way"));
    }

    private Ways.HeldBack heldBack(Yaml entry) {
        entry.only("id", "when", "on", "lifts", "source");
        sources(entry.at("source"));
        return new Ways.HeldBack(IdSyntax.read(entry.at("id")), conditions.read(entry.at("when")),
            Set.copyOf(entry.at("on").each(step -> step.oneOf(known.steps().keySet(), "step"))),
            entry.at("lifts").oneOf(LIFTS_NONE, "answer"));
    }

    private List<String> sources(Yaml keys) {
        return keys.listOrOne().stream().map(key -> key.oneOf(sources, "source")).toList();
    }
}
