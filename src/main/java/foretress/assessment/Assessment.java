package foretress.assessment;

import java.util.List;
import java.util.Optional;

/** What the facts mean under one version of the rules, for every service looked at; the heaviest findings first. */
public record Assessment(String ruleSetHash, Facts facts, List<Finding> findings, List<Standing> standings) {
    public Assessment {
        findings = List.copyOf(findings);
        standings = List.copyOf(standings);
    }

    public Optional<Standing> standing(String serviceId) {
        return standings.stream().filter(s -> s.serviceId().equals(serviceId)).findFirst();
    }

    public Optional<Finding> finding(String ruleId) {
        return findings.stream().filter(f -> f.ruleId().equals(ruleId)).findFirst();
    }

    /** The findings whose words are shown, the heaviest first; of several on one fact those of its worst class that may hold. */
    public List<Finding> spoken() {
        return findings.stream().filter(Finding::speaks).toList();
    }

    /** The findings whose words are shown on this service, the heaviest first. */
    public List<Finding> spokenOn(Service service) {
        return on(service).stream().filter(f -> f.speaksOn(List.of(service))).toList();
    }

    /** The findings that weigh something on this service, the heaviest first; also those for which a heavier one speaks. */
    public List<Finding> on(Service service) {
        return findings.stream().filter(f -> f.on(service) != Weight.NOTHING_FOUND)
            .sorted((a, b) -> b.on(service).compareTo(a.on(service))).toList();
    }
}
