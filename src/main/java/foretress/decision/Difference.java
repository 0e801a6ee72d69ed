package foretress.decision;

import foretress.assessment.Assessment;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What one assessment finds for some services and another does not, or weighs differently. */
public record Difference(List<Change> changes) {
    public Difference {
        changes = List.copyOf(changes);
    }

    /** @param unsure the wording that holds: the later finding's, or the earlier's when it is gone */
    public record Change(String ruleId, boolean unsure, Weight before, Weight after) {
        Weight heaviest() {
            return before.heavier(after);
        }

        public boolean heavier() {
            return after.compareTo(before) > 0;
        }
    }

    public static Difference between(Assessment before, Assessment now, List<Service> services) {
        Map<String, Finding> rules = new LinkedHashMap<>();
        before.findings().forEach(f -> rules.put(f.ruleId(), f));
        now.findings().forEach(f -> rules.put(f.ruleId(), f));
        List<Change> changes = new ArrayList<>();
        rules.forEach((id, finding) -> {
            Weight then = weight(before, id, services);
            Weight later = weight(now, id, services);
            if (then != later) {
                changes.add(new Change(id, finding.onlyIfUnknown(), then, later));
            }
        });
        changes.sort((a, b) -> b.heaviest().compareTo(a.heaviest()));
        return new Difference(changes);
    }

    private static Weight weight(Assessment assessment, String rule, List<Service> services) {
        return assessment.finding(rule).map(f -> Weight.heaviest(services.stream().map(f::on).toList()))
            .orElse(Weight.NOTHING_FOUND);
    }

    public boolean none() {
        return changes.isEmpty();
    }
}
