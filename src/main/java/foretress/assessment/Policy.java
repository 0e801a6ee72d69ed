package foretress.assessment;

import foretress.questionnaire.SaidDate.Hemisphere;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a jurisdiction or the salon sets.
 *
 * @param figures whole numbers by name; the name ends in their unit
 * @param paper {@code A4} or {@code Letter}
 * @param warnings what the law has printed or said, in order
 * @param source key of the rule set's sources
 */
public record Policy(String jurisdiction, Map<String, Integer> figures, String emergencyNumber, String paper, Hemisphere hemisphere,
                     List<Warning> warnings, String source) {
    /** A warning by its id, and the key of its source. */
    public record Warning(String id, String source) {}

    public Policy {
        figures = Map.copyOf(figures);
        warnings = List.copyOf(warnings);
    }

    /** Age in years at the day of the service. */
    public int minimumAge() {
        return figure("minimum-age");
    }

    /** The age the label of oxidative dyes names, in years. */
    public int labelAge() {
        return figure("label-age");
    }

    /** Hours on the physical clock from applying a skin test to reading it. */
    public int skinTestWaitHours() {
        return figure("skin-test-wait-hours");
    }

    /** Months a negative skin test stands; 0 when a test counts for one application. */
    public int skinTestValidityMonths() {
        return figure("skin-test-validity-months");
    }

    /** Hours from setting up an incompatibility test to the last look. */
    public int incompatibilityTestHours() {
        return figure("incompatibility-test-hours");
    }

    /** Months after its end in which chemotherapy prevents. */
    public int chemotherapyMonths() {
        return figure("chemotherapy-months");
    }

    /** Years documents are kept. */
    public int retentionYears() {
        return figure("retention-years");
    }

    /** The same with one figure changed. */
    public Policy with(String name, int value) {
        Map<String, Integer> changed = new HashMap<>(figures);
        changed.put(name, value);
        return new Policy(jurisdiction, changed, emergencyNumber, paper, hemisphere, warnings, source);
    }

    public int figure(String name) {
        return Optional.ofNullable(figures.get(name))
            .orElseThrow(() -> new IllegalArgumentException("the policy of %s sets no %s".formatted(jurisdiction, name)));
    }
}
