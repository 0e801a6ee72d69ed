package foretress.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Rule;
import foretress.assessment.Step;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/**
 * The laws of findings, tried over every range of every fact a rule reads, none left out.
 *
 * <p>A standing is a maximum over rules. Some rules leave out whom a heavier one covers, so a rule is tried together with all
 * rules that read no other facts than it does, on the steps it weighs on. Where each of these groups keeps the law, their maximum
 * does, and with it the whole rule set over the whole space of facts.
 */
@Execution(ExecutionMode.CONCURRENT)
class LawsTest {
    private static final Knowledge KNOWLEDGE = Loaded.KNOWLEDGE;
    private static final List<Step> STEPS = KNOWLEDGE.ruleSet().steps();
    private static final AtomicLong TRIED = new AtomicLong();
    private static final AtomicLong COMPARED = new AtomicLong();

    /** From the best class it may have to the worst, both included. */
    private record Range(int best, int worst) {}

    @TestFactory
    Stream<DynamicTest> aFactThatGetsWorseOrLessKnownNeverLightensAStep() {
        return KNOWLEDGE.ruleSet().rules().stream()
            .map(rule -> dynamicTest(rule.id(), () -> Group.holds(rule, KNOWLEDGE.ruleSet().rules())));
    }

    /** A trial that cannot fail proves nothing: without the rules that cover reactors, asking them for no skin test is a fault. */
    @Test
    void theTrialNoticesARuleThatLeavesOutWhomNoOtherCovers() {
        Rule owed = KNOWLEDGE.ruleSet().rule("colour-owes-a-skin-test").orElseThrow();
        assertThatThrownBy(() -> Group.holds(owed, List.of(owed))).isInstanceOf(AssertionError.class)
            .hasMessageContaining("falls from test first");
    }

    @Test
    void anUnknownReadingIsNeverHeavierThanTheKnownOneNorLighterThanRestrictsWhereItPrevents() {
        for (Rule rule : KNOWLEDGE.ruleSet().rules()) {
            for (Step step : STEPS) {
                assertThat(rule.unknownWeightOn(step)).as(rule.id()).isLessThanOrEqualTo(rule.weightOn(step));
                if (rule.weightOn(step) == Weight.PREVENTS) {
                    assertThat(rule.unknownWeightOn(step)).as(rule.id()).isGreaterThanOrEqualTo(Weight.RESTRICTS);
                }
            }
        }
    }

    @AfterAll
    static void coverage() {
        System.out.printf("laws: %d rules, %,d combinations of ranges, %,d pairs compared, of %d steps%n",
            KNOWLEDGE.ruleSet().rules().size(), TRIED.get(), COMPARED.get(), STEPS.size());
    }

    /** A rule, the facts it reads, and the rules that read no others; what a doctor's word is about goes with the word. */
    private static final class Group {
        private final Rule rule;
        private final List<FactDef> facts;
        private final List<List<Range>> ranges;
        private final List<Rule> rules;
        private final List<Step> steps;
        private final List<Weighed> weighed;

        /** What one rule weighs on each of the steps: when it surely holds, and when it may. */
        private record Weighed(Rule rule, List<Weight> surely, List<Weight> perhaps) {
            static Weighed of(Rule rule, List<Step> steps) {
                return new Weighed(rule, steps.stream().map(rule::weightOn).toList(),
                    steps.stream().map(rule::unknownWeightOn).toList());
            }
        }

        /** A sum is first taken for a fact like any other; where the law does not hold so, it follows from its parts. */
        static void holds(Rule rule, List<Rule> among) {
            boolean sums = rule.when().reads().stream().anyMatch(Sums::isSum);
            try {
                new Group(rule, among, Stream::of).holds();
            } catch (AssertionError untold) {
                if (!sums) {
                    throw untold;
                }
                new Group(rule, among, id -> Sums.parts(id).map(FactDef::id)).holds();
            }
        }

        private Group(Rule rule, List<Rule> among, Function<String, Stream<String>> parts) {
            Set<String> read = withWords(rule, among).stream().flatMap(parts)
                .collect(Collectors.toCollection(LinkedHashSet::new));
            this.rule = rule;
            this.facts = read.stream().map(id -> KNOWLEDGE.ruleSet().fact(id).orElseThrow()).toList();
            this.ranges = facts.stream().map(Group::rangesOf).toList();
            this.rules = among.stream()
                .filter(other -> other.when().reads().stream().flatMap(parts).allMatch(read::contains)).toList();
            this.steps = STEPS.stream().filter(step -> rule.weightOn(step) != Weight.NOTHING_FOUND).toList();
            this.weighed = rules.stream().map(one -> Weighed.of(one, steps)).toList();
        }

        /** A word is looked at too where a rule that reads it weighs on a step this rule weighs on: nowhere else can it cover for it. */
        private static Set<String> withWords(Rule rule, List<Rule> among) {
            Set<String> reads = rule.when().reads();
            Set<String> all = new LinkedHashSet<>(reads);
            for (FactDef def : KNOWLEDGE.ruleSet().facts()) {
                List<String> about = def.computation().filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE)
                    .map(how -> how.of()).orElse(List.of());
                if (reads.contains(def.id())
                    || about.stream().anyMatch(reads::contains) && mayCover(def.id(), rule, among)) {
                    all.add(def.id());
                    all.addAll(about);
                }
            }
            return all;
        }

        private static boolean mayCover(String word, Rule rule, List<Rule> among) {
            return among.stream().filter(other -> other.when().reads().contains(word))
                .anyMatch(other -> STEPS.stream().anyMatch(step -> other.weightOn(step) != Weight.NOTHING_FOUND
                    && rule.weightOn(step) != Weight.NOTHING_FOUND));
        }

        private static boolean alwaysKnown(FactDef def) {
            return def.rows().isEmpty()
                && def.isAlwaysKnown();
        }

        private static List<Range> rangesOf(FactDef def) {
            List<Range> all = new ArrayList<>();
            boolean known = alwaysKnown(def);
            for (int best = 0; best <= def.worst(); best++) {
                for (int worst = best; worst <= (known ? best : def.worst()); worst++) {
                    all.add(new Range(best, worst));
                }
            }
            return all;
        }

        void holds() {
            int combinations = ranges.stream().mapToInt(List::size).reduce(1, Math::multiplyExact);
            Weight[][] weights = new Weight[combinations][];
            for (int n = 0; n < combinations; n++) {
                weights[n] = weights(facts(n));
            }
            TRIED.addAndGet(combinations);
            for (int n = 0; n < combinations; n++) {
                for (int worse : worse(n)) {
                    assertNotLighter(n, worse, weights);
                }
            }
        }

        private void assertNotLighter(int n, int worse, Weight[][] weights) {
            COMPARED.incrementAndGet();
            for (int s = 0; s < steps.size(); s++) {
                if (weights[worse][s].compareTo(weights[n][s]) < 0) {
                    throw new AssertionError(
                        "%s: %s falls from %s at %s to %s at %s".formatted(rule.id(), steps.get(s).id(),
                            weights[n][s].code(), facts(n).byId().values(), weights[worse][s].code(),
                            facts(worse).byId().values()));
                }
            }
        }

        private Weight[] weights(Facts known) {
            Weight[] weights = new Weight[steps.size()];
            Arrays.fill(weights, Weight.NOTHING_FOUND);
            for (Weighed one : weighed) {
                Truth truth = one.rule().when().of(known);
                for (int s = 0; truth != Truth.FALSE && s < weights.length; s++) {
                    weights[s] = weights[s].heavier((truth == Truth.TRUE ? one.surely() : one.perhaps()).get(s));
                }
            }
            return weights;
        }

        /** The n-th combination, read as a number whose digits count the ranges of each fact. */
        private Facts facts(int n) {
            List<FactValue> values = new ArrayList<>();
            int rest = n;
            for (int f = 0; f < facts.size(); f++) {
                Range range = ranges.get(f).get(rest % ranges.get(f).size());
                values.add(FactValue.between(facts.get(f), range.best(), range.worst(), List.of()));
                rest /= ranges.get(f).size();
            }
            return Sums.settled(Facts.of(values));
        }

        /** The same with one fact's best or worst class one further to the worse. */
        private List<Integer> worse(int n) {
            List<Integer> worse = new ArrayList<>();
            int rest = n;
            int place = 1;
            for (List<Range> digit : ranges) {
                int at = rest % digit.size();
                Range range = digit.get(at);
                for (Range further : List.of(new Range(range.best() + 1, range.worst()),
                    new Range(range.best(), range.worst() + 1),
                    new Range(range.best() + 1, range.worst() + 1))) {
                    int to = digit.indexOf(further);
                    if (to >= 0) {
                        worse.add(n + (to - at) * place);
                    }
                }
                rest /= digit.size();
                place *= digit.size();
            }
            return worse;
        }
    }
}
