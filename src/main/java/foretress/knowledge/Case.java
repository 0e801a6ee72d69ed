package foretress.knowledge;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One case: a client before a visit, and what must come out.
 *
 * @param findings rules that must weigh on the service
 * @param not rules that must not
 * @param demands tests that the findings on the service ask for
 * @param weights what named rules must weigh on the service
 * @param standings where other services must stand
 */
public record Case(String file, String name, Situation situation, Service service, Optional<Weight> standing,
    List<String> findings,
    List<String> not, List<String> demands, Map<String, Weight> weights, Map<String, Weight> standings) {

    /**
     * Every case of some files.
     *
     * @param files what the files hold, by name
     * @throws KnowledgeException if anything is wrong with them, naming every fault with its place
     */
    public static List<Case> read(Knowledge knowledge, Map<String, String> files) {
        var complaints = new Complaints();
        var reader = new CaseReader(knowledge);
        List<Case> read = new ArrayList<>();
        files.forEach((name, text) -> Yaml.read(name, text, complaints)
            .ifPresent(file -> file.trying(whole -> read.addAll(reader.read(name, whole)))));
        complaints.orThrow();
        return read;
    }

    /** The service of the case first, then every other one. */
    public Assessment assess(Knowledge knowledge) {
        List<Service> offered = new ArrayList<>(List.of(service));
        knowledge.ruleSet().services().stream().filter(s -> !s.id().equals(service.id())).forEach(offered::add);
        return Assessor.assess(knowledge.ruleSet(), knowledge.factFinder().find(situation), offered);
    }

    /** What came out otherwise than expected, a sentence each; empty when the case holds. */
    public List<String> faults(Assessment assessment) {
        List<String> faults = new ArrayList<>();
        Map<String, Finding> on = assessment.on(service).stream().collect(Collectors.toMap(Finding::ruleId, f -> f));
        List<String> demanded = on.values().stream().flatMap(f -> f.demands().stream()).toList();
        standing.ifPresent(weight -> compare(service.id(), weight, standing(assessment, service.id()), faults));
        lacking(findings, on.keySet(), "%s must be found and is not", faults);
        not.stream().filter(on::containsKey).forEach(id -> faults.add("%s must not be found and is".formatted(id)));
        lacking(demands, demanded, "%s must be demanded and is not", faults);
        weights.forEach(
            (rule, weight) -> compare(rule, weight, Optional.ofNullable(on.get(rule)).map(f -> f.on(service)), faults));
        standings.forEach((other, weight) -> compare(other, weight, standing(assessment, other), faults));
        return faults;
    }

    private static void lacking(List<String> wanted, Collection<String> there, String sentence, List<String> faults) {
        wanted.stream().filter(id -> !there.contains(id)).forEach(id -> faults.add(sentence.formatted(id)));
    }

    private static Optional<Weight> standing(Assessment assessment, String service) {
        return assessment.standing(service).map(s -> s.weight());
    }

    private static void compare(String what, Weight expected, Optional<Weight> found, List<String> faults) {
        if (found.filter(expected::equals).isEmpty()) {
            faults.add("%s must be '%s' and is '%s'".formatted(what, expected.code(),
                found.map(Weight::code).orElse("not found")));
        }
    }
}
