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

    /** The findings that weigh something on this service, the heaviest first. */
    public List<Finding> on(Service service) {
        return findings.stream().filter(f -> f.on(service) != Weight.NOTHING_FOUND)
            .sorted((a, b) -> b.on(service).compareTo(a.on(service))).toList();
    }
}
