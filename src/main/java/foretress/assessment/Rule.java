package foretress.assessment;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One rule as knowledge gives it.
 *
 * @param weights by chemistry or step id
 * @param ifUnknown the lighter weight when only an unknown reading makes it fire
 * @param demands ids of the tests it asks for
 * @param sources keys of the rule set's sources, at least one
 * @param lasting nobody can go against it, the owner included ({@code final} in the rule file)
 * @param readAgainDays days after its start on which a skin test is read once more, and before which it proves nothing;
 *     0 when the wait is enough ({@code read again} in the rule file)
 * @param calls a person telephones the client, who is told so at once ({@code call} in the rule file)
 * @param wordFirst no skin test is made before the word it asks for ({@code word first} in the rule file)
 * @param speaks while this surely holds its words are true; empty: whenever it fires ({@code speaks} in the rule file)
 */
public record Rule(String id, Condition when, Map<String, Weight> weights, Optional<Weight> ifUnknown,
    List<String> demands,
    List<String> sources, boolean lasting, boolean calls, int readAgainDays, boolean wordFirst,
    Optional<Condition> speaks) {
    public Rule {
        weights = Map.copyOf(weights);
        demands = List.copyOf(demands);
        sources = List.copyOf(sources);
    }

    /** A rule whose words are true whenever it fires, and which asks for no later reading of a skin test. */
    public Rule(String id, Condition when, Map<String, Weight> weights, Optional<Weight> ifUnknown,
        List<String> demands,
        List<String> sources, boolean lasting, boolean calls) {
        this(id, when, weights, ifUnknown, demands, sources, lasting, calls, 0, false, Optional.empty());
    }

    /** What it weighs on a step when it certainly holds: the heaviest of what it says about the step and its chemistries. */
    public Weight weightOn(Step step) {
        Weight heaviest = weights.getOrDefault(step.id(), Weight.NOTHING_FOUND);
        for (String chemistry : step.uses()) {
            heaviest = heaviest.heavier(weights.getOrDefault(chemistry, Weight.NOTHING_FOUND));
        }
        return heaviest;
    }

    /** What it weighs when it may hold: as heavy, or the lighter weight it names; where it prevents, never below restricts. */
    public Weight unknownWeightOn(Step step) {
        Weight full = weightOn(step);
        Weight lighter = ifUnknown.map(full::lighter).orElse(full);
        return full == Weight.PREVENTS ? lighter.heavier(Weight.RESTRICTS) : lighter;
    }
}
