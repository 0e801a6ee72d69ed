package foretress.assessment;

import java.util.List;
import java.util.function.Function;

/**
 * What hides a reaction to a skin test, or may: the facts named beside it that may have their worst class. A doctor who was asked
 * about one of them and said yes, with care, takes it away; the test is then made and read as that doctor said.
 */
record Masks(RuleSet rules, FactDef.Computation skinTest) {
    List<String> now(Function<String, FactValue> found) {
        return skinTest.of().stream().filter(id -> found.apply(id).mayBeWorst() && !spokenFor(id, found)).toList();
    }

    private boolean spokenFor(String id, Function<String, FactValue> found) {
        return rules.facts().stream().filter(def -> def.computation()
            .filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE && how.of().equals(List.of(id))).isPresent())
            .anyMatch(def -> found.apply(def.id()).worst() == 0);
    }
}
