package foretress.assessment;

import foretress.questionnaire.SaidDate.Hemisphere;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a jurisdiction or the salon sets.
 *
 * @param figures whole numbers by name; the name ends in their unit
 * @param sources the key of the rule set's source for every figure
 * @param paper {@code A4} or {@code Letter}
 * @param warnings what the law has printed on labels, in order
 */
public record Policy(String jurisdiction, Map<String, Integer> figures, Map<String, String> sources,
    String emergencyNumber, String paper,
    Hemisphere hemisphere, List<Warning> warnings) {
    /** A warning by its id, the chemistries whose labels bear it, and the key of its source. */
    public record Warning(String id, Set<String> on, String source) {
        public Warning {
            on = Set.copyOf(on);
        }
    }

    public Policy {
        figures = Map.copyOf(figures);
        sources = Map.copyOf(sources);
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

    /** The first day on which somebody has the label's age; born on 29 February, it is 1 March in a common year. */
    public LocalDate oldEnough(LocalDate born) {
        LocalDate day = born.plusYears(labelAge());
        return day.getDayOfMonth() < born.getDayOfMonth() ? day.plusDays(1) : day;
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

    /** Years documents are kept. */
    public int retentionYears() {
        return figure("retention-years");
    }

    /** The age in years to which a minor's documents are kept at least. */
    public int minorRetentionAge() {
        return figure("minor-retention-age");
    }

    /** The warnings on the labels of what a service puts on the client, by id, in order. */
    public Stream<String> warningsOn(Set<String> chemistries) {
        return warnings.stream().filter(warning -> warning.on().stream().anyMatch(chemistries::contains))
            .map(Warning::id);
    }

    /** The same with one figure changed. */
    public Policy with(String name, int value) {
        Map<String, Integer> changed = new HashMap<>(figures);
        changed.put(name, value);
        return with(changed);
    }

    /** The same with other figures; where they come from stays. */
    public Policy with(Map<String, Integer> changed) {
        return new Policy(jurisdiction, changed, sources, emergencyNumber, paper, hemisphere, warnings);
    }

    /** @throws IllegalArgumentException if the policy sets no such figure */
    public String source(String name) {
        return Optional.ofNullable(sources.get(name))
            .orElseThrow(() -> new IllegalArgumentException(
                "the policy of %s names no source of %s".formatted(jurisdiction, name)));
    }

    public int figure(String name) {
        return Optional.ofNullable(figures.get(name))
            .orElseThrow(
                () -> new IllegalArgumentException("the policy of %s sets no %s".formatted(jurisdiction, name)));
    }
}
