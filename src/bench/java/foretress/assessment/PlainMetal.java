package foretress.assessment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The rules on metal once more, written by hand: what a benchmark of the rules is measured against. */
final class PlainMetal {
    private static final Set<String> ALL_SIX = Set.of("peroxide", "persulfate", "thio", "gmtg", "hydroxide", "remover");
    private static final Set<String> BY_WELL = Set.of("peroxide", "persulfate", "thio", "gmtg", "remover");
    private static final Set<String> DYED = Set.of("direct-dye", "plant-dye", "keratin");
    private static final List<String> IDS =
        List.of("metal-meets-peroxide", "metal-test-positive", "metal-test-nothing-happened",
            "metal-tested-cutting-owed", "metal-tested-quiet", "metal-meets-direct-dye", "metal-under-direct-dye",
            "odd-fade", "well-water",
            "pool-or-well-water");

    private PlainMetal() {}

    static RuleSet only(RuleSet rules) {
        return new RuleSet(rules.facts(), rules.treatments(),
            rules.rules().stream().filter(r -> IDS.contains(r.id())).toList(), rules.steps(),
            rules.services(), rules.tests(), rules.sources(), rules.hash());
    }

    /** For facts that are all known, as the benchmark's client's are where these rules look. */
    static Map<String, Weight> standings(Facts facts, List<Service> services) {
        boolean suspected = at(facts, "metal", "suspected") || at(facts, "label-metal", "salt");
        int test = ordinal(facts, "metal-test");
        boolean cut = ordinal(facts, "test-cutting") != 1;
        boolean fade = at(facts, "odd-fade", "seen");
        boolean well = at(facts, "water", "well");
        boolean pool = at(facts, "water", "pool");
        Map<String, Weight> standings = new LinkedHashMap<>();
        for (Service service : services) {
            Weight heaviest = Weight.NOTHING_FOUND;
            for (Step step : service.steps()) {
                for (String chemistry : step.uses()) {
                    heaviest = heaviest.heavier(on(chemistry, suspected, test, cut, fade, well, pool));
                }
            }
            standings.put(service.id(), heaviest);
        }
        return standings;
    }

    private static Weight on(String chemistry, boolean suspected, int test, boolean cut, boolean fade, boolean well,
        boolean pool) {
        if (ALL_SIX.contains(chemistry)) {
            if (test >= 2) {
                return Weight.PREVENTS;
            }
            if (test == 1 && (suspected || fade || well && BY_WELL.contains(chemistry))
                || suspected && test == 0 && !cut) {
                return Weight.TEST_FIRST;
            }
            return suspected || pool && BY_WELL.contains(chemistry) ? Weight.RESTRICTS : Weight.NOTHING_FOUND;
        }
        if (DYED.contains(chemistry) && suspected && test >= 1) {
            return cut ? Weight.RESTRICTS : Weight.TEST_FIRST;
        }
        return chemistry.equals("direct-dye") && pool ? Weight.NOTE : Weight.NOTHING_FOUND;
    }

    private static boolean at(Facts facts, String fact, String className) {
        FactValue value = facts.get(fact);
        return value.worst() >= value.classes().indexOf(className);
    }

    private static int ordinal(Facts facts, String fact) {
        return facts.get(fact).worst();
    }
}
