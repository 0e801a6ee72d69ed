package foretress.assessment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What hides a reaction to a skin test, or may: the facts named beside it that may have their worst class. A doctor who was asked
 * about one of them and said yes, with care, takes it away; the test is then made and read as that doctor said.
 *
 * @param words by the fact that hides a reaction: the facts that hold a doctor's word about it alone
 */
record Masks(Map<String, List<String>> words) {
    static Masks of(RuleSet rules, FactDef.Computation skinTest) {
        Map<String, List<String>> words = new LinkedHashMap<>();
        skinTest.of().forEach(id -> words.put(id, rules.facts().stream().filter(def -> def.computation()
            .filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE && how.of().equals(List.of(id))).isPresent())
            .map(FactDef::id).toList()));
        return new Masks(words);
    }

    List<String> now(Function<String, FactValue> found) {
        return words.entrySet().stream().filter(entry -> found.apply(entry.getKey()).mayBeWorst()
            && entry.getValue().stream().noneMatch(word -> found.apply(word).worst() == 0))
            .map(Map.Entry::getKey).toList();
    }
}
