package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Rule;
import foretress.assessment.Step;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The proof that a worse answer never lightens a service and that not knowing is never lighter than the best class. A
 * standing is the heaviest of all rules, so it is enough to try each rule over every range of the facts it reads, beside
 * the rules that read no others: where a rule falls silent because a heavier one speaks, that one is among them. Nothing is
 * sampled.
 */
class RulesNeverLightenTest {
    private static final Knowledge KNOWLEDGE = Knowledge.load();
    private static final List<Step> STEPS = KNOWLEDGE.ruleSet().steps();

    @TestFactory
    Stream<DynamicTest> aWorseClassNeverLightensAnyStep() {
        return KNOWLEDGE.ruleSet().rules().stream().map(rule -> DynamicTest.dynamicTest(rule.id(), () -> new Space(rule).provesItself()));
    }

    /** Every combination of ranges of the facts one rule reads. */
    private static final class Space {
        private final List<FactDef> facts;
        private final List<Rule> rules;
        private final List<List<FactValue>> ranges;
        private final Map<Integer, Weight[]> known = new HashMap<>();
        private final String name;

        Space(Rule rule) {
            name = rule.id();
            Set<String> read = rule.when().reads();
            facts = read.stream().map(id -> KNOWLEDGE.ruleSet().fact(id).orElseThrow()).toList();
            rules = KNOWLEDGE.ruleSet().rules().stream().filter(r -> read.containsAll(r.when().reads())).toList();
            ranges = facts.stream().map(Space::ranges).toList();
        }

        void provesItself() {
            int[] place = new int[facts.size()];
            do {
                for (int fact = 0; fact < place.length; fact++) {
                    stepsUp(place, fact);
                }
            } while (next(place));
        }

        /** From here, one fact's best class gets worse, or its worst class does: no step may get lighter. */
        private void stepsUp(int[] place, int fact) {
            FactValue here = ranges.get(fact).get(place[fact]);
            for (int there = 0; there < ranges.get(fact).size(); there++) {
                FactValue worse = ranges.get(fact).get(there);
                boolean bestUp = worse.best() == here.best() + 1 && worse.worst() == here.worst();
                boolean worstUp = worse.best() == here.best() && worse.worst() == here.worst() + 1;
                if (bestUp || worstUp) {
                    int[] then = place.clone();
                    then[fact] = there;
                    notLighter(place, then);
                }
            }
        }

        private void notLighter(int[] before, int[] after) {
            Weight[] was = weights(before);
            Weight[] is = weights(after);
            for (int step = 0; step < was.length; step++) {
                if (!is[step].atLeast(was[step])) {
                    assertThat(is[step]).as("%s: %s, %s to %s", name, STEPS.get(step).id(), told(before), told(after)).isEqualTo(was[step]);
                }
            }
        }

        private Weight[] weights(int[] place) {
            return known.computeIfAbsent(number(place), n -> reckon(Facts.of(values(place))));
        }

        private Weight[] reckon(Facts values) {
            Weight[] heaviest = new Weight[STEPS.size()];
            Arrays.fill(heaviest, Weight.NOTHING_FOUND);
            for (Rule rule : rules) {
                Truth truth = rule.when().of(values);
                for (int step = 0; step < heaviest.length && truth != Truth.FALSE; step++) {
                    Weight weight = truth == Truth.TRUE ? rule.weightOn(STEPS.get(step)) : rule.unknownWeightOn(STEPS.get(step));
                    heaviest[step] = heaviest[step].heavier(weight);
                }
            }
            return heaviest;
        }

        private List<FactValue> values(int[] place) {
            List<FactValue> values = new ArrayList<>();
            for (int fact = 0; fact < place.length; fact++) {
                values.add(ranges.get(fact).get(place[fact]));
            }
            return values;
        }

        private int number(int[] place) {
            int number = 0;
            for (int fact = 0; fact < place.length; fact++) {
                number = number * ranges.get(fact).size() + place[fact];
            }
            return number;
        }

        private boolean next(int[] place) {
            int fact = 0;
            while (fact < place.length && ++place[fact] == ranges.get(fact).size()) {
                place[fact++] = 0;
            }
            return fact < place.length;
        }

        private String told(int[] place) {
            return values(place).toString();
        }

        private static List<FactValue> ranges(FactDef def) {
            List<FactValue> ranges = new ArrayList<>();
            for (int best = 0; best < def.classes().size(); best++) {
                for (int worst = best; worst < def.classes().size(); worst++) {
                    ranges.add(FactValue.between(def, best, worst, List.of()));
                }
            }
            return ranges;
        }
    }
}
