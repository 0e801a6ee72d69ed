package foretress.knowledge;

import foretress.assessment.AnyOf;
import foretress.assessment.FactDef;
import foretress.assessment.Facts;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Facts that sum up others: where a test makes facts up, the sums follow from their parts, as they do for a client. */
final class Sums {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;

    private static final List<FactDef> ALL =
        KNOWLEDGE.ruleSet().facts().stream().filter(def -> !def.sumOf().isEmpty()).toList();

    private Sums() {}

    /** The class of a part from which on it counts for a sum; empty where it is no part of it. */
    static Optional<Integer> from(String sum, FactDef part) {
        return Optional.ofNullable(fact(sum).sumOf().get(part.id())).map(part::ordinal);
    }

    /** The facts a fact is told by: its parts, or itself. */
    static Stream<FactDef> parts(String id) {
        FactDef def = fact(id);
        return def.sumOf().isEmpty() ? Stream.of(def) : def.sumOf().keySet().stream().map(Sums::fact);
    }

    static boolean isSum(String id) {
        return !fact(id).sumOf().isEmpty();
    }

    /** The same facts with every sum as its parts, where all of them are here, make it. */
    static Facts settled(Facts facts) {
        Facts settled = facts;
        for (FactDef sum : ALL) {
            if (facts.byId().keySet().containsAll(sum.sumOf().keySet())) {
                settled = settled.with(AnyOf.find(sum, Sums::fact, part -> facts.get(part.id())));
            }
        }
        return settled;
    }

    private static FactDef fact(String id) {
        return KNOWLEDGE.ruleSet().fact(id).orElseThrow();
    }
}
