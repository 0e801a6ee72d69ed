package foretress.knowledge;

import foretress.assessment.Service;
import foretress.assessment.Step;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads what can be done: chemistries, tests, steps, services. */
final class ServicesReader {
    private final Set<String> chemistries = new LinkedHashSet<>();
    private final Set<String> tests = new LinkedHashSet<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, Service> services = new LinkedHashMap<>();

    ServicesReader read(Yaml file) {
        file.only("chemistries", "tests", "steps", "services");
        file.at("chemistries").each(c -> add(chemistries, c, "chemistries"));
        file.at("tests").each(t -> add(tests, t, "tests"));
        file.at("steps").each(this::step);
        file.at("services").each(this::service);
        return this;
    }

    private static String add(Set<String> known, Yaml name, String kind) {
        String id = Ids.read(name);
        if (!known.add(id)) {
            name.complain("two %s are called '%s'".formatted(kind, id));
        }
        return id;
    }

    private Step step(Yaml entry) {
        entry.only("id", "uses");
        Step step = new Step(Ids.read(entry.at("id")), Set.copyOf(entry.at("uses").each(c -> c.oneOf(chemistries, "chemistry"))));
        if (steps.putIfAbsent(step.id(), step) != null || chemistries.contains(step.id())) {
            entry.at("id").complain("another step or chemistry is called '%s'".formatted(step.id()));
        }
        return step;
    }

    private Service service(Yaml entry) {
        entry.only("id", "steps");
        Service service = new Service(Ids.read(entry.at("id")), entry.at("steps").each(s -> steps.get(s.oneOf(steps.keySet(), "step"))));
        if (services.putIfAbsent(service.id(), service) != null) {
            entry.at("id").complain("two services are called '%s'".formatted(service.id()));
        }
        return service;
    }

    Set<String> chemistries() {
        return chemistries;
    }

    Set<String> tests() {
        return tests;
    }

    Map<String, Step> steps() {
        return steps;
    }

    List<Service> services() {
        return List.copyOf(services.values());
    }
}
