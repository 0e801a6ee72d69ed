package foretress.knowledge;

import foretress.assessment.Condition.Compare;
import foretress.assessment.Condition.Op;
import foretress.assessment.Rule;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;

/** Finds rules that climb the same fact: one of them fires in the classes of which the other speaks. */
final class Voice {
    private static final Set<Op> UPWARDS = Set.of(Op.GREATER, Op.GREATER_OR_EQUAL);
    private static final Set<Op> AT_A_CLASS = Set.of(Op.GREATER, Op.GREATER_OR_EQUAL, Op.EQUAL);

    private Voice() {}

    /** Another rule that begins at a worse class of a fact which this one reads upwards; empty where there is none. */
    static Optional<Rule> worseOf(Rule rule, Collection<Rule> all) {
        return all.stream().filter(
            other -> other != rule && rule.when().compares().stream().filter(compare -> UPWARDS.contains(compare.op()))
                .anyMatch(compare -> beginsWorse(other, compare)))
            .findFirst();
    }

    private static boolean beginsWorse(Rule other, Compare than) {
        return other.when().compares().stream()
            .anyMatch(compare -> compare.fact().equals(than.fact()) && AT_A_CLASS.contains(compare.op())
                && compare.ordinal() > than.ordinal());
    }
}
