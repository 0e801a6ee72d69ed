package foretress.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Facts and rules into findings and standings.
 *
 * <p>A rule fires unless its condition is false under every reading of what is not known. Rules only add: nothing takes a
 * finding away. A rule that fails is a finding of its own, "could not be assessed".
 *
 * <p>A question that was not put because of the booked service is the one unknown that does not count as a yes, and only
 * for services that would have it put: those show how many questions are still to be asked.
 */
public final class Assessor {
    private Assessor() {}

    public static Assessment assess(RuleSet rules, Facts facts, List<Service> offered) {
        List<Outcome> outcomes = rules.rules().stream().map(rule -> Outcome.of(rule, facts)).toList();
        List<Finding> findings = outcomes.stream().flatMap(o -> o.finding(offered).stream())
            .sorted(Comparator.comparing(Finding::weight).reversed()).toList();
        List<Standing> standings = offered.stream().map(service -> standing(service, outcomes)).toList();
        return new Assessment(rules.hash(), facts, findings, standings);
    }

    private static Standing standing(Service service, List<Outcome> outcomes) {
        Map<String, Weight> weights = new LinkedHashMap<>();
        Set<String> notAsked = new LinkedHashSet<>();
        Set<String> unanswered = new LinkedHashSet<>();
        for (Outcome outcome : outcomes) {
            weights.put(outcome.rule().id(), outcome.on(service));
            notAsked.addAll(outcome.notAskedFor(service));
            unanswered.addAll(outcome.unansweredFor(service));
        }
        Weight heaviest = Weight.heaviest(weights.values());
        List<String> deciding = heaviest == Weight.NOTHING_FOUND ? List.of()
            : weights.keySet().stream().filter(id -> weights.get(id) == heaviest).toList();
        return new Standing(service.id(), heaviest, deciding, notAsked.size(), unanswered.size());
    }

    /**
     * How one rule comes out.
     *
     * @param truth with everything unknown taken as unknown
     * @param asked with the questions not put taken as answered well
     */
    private record Outcome(Rule rule, Truth truth, Truth asked, boolean failed, List<FactValue> read, List<FactValue> decided) {

        static Outcome of(Rule rule, Facts facts) {
            try {
                List<FactValue> read = rule.when().reads().stream().map(facts::get).toList();
                Truth truth = rule.when().of(facts);
                List<FactValue> decided = rule.when().deciding(facts).stream().map(facts::get).toList();
                return new Outcome(rule, truth, asked(rule, facts, read), false, read, decided);
            } catch (RuntimeException fault) {
                return new Outcome(rule, Truth.TRUE, Truth.TRUE, true, List.of(), List.of());
            }
        }

        private static Truth asked(Rule rule, Facts facts, List<FactValue> read) {
            Facts asAsked = facts;
            for (FactValue value : read) {
                asAsked = value.notAsked().isEmpty() ? asAsked : asAsked.with(value.asAsked());
            }
            return rule.when().of(asAsked);
        }

        /** The rule fires only because questions were not put that booking this service would have put. */
        boolean waitsFor(Service service) {
            return truth != Truth.FALSE && asked == Truth.FALSE
                && notAsked().allMatch(question -> question.putFor(service.chemistries()));
        }

        Stream<NotAsked> notAsked() {
            return read.stream().flatMap(value -> value.notAsked().stream());
        }

        Weight weightOn(Step step) {
            Weight full = rule.weightOn(step);
            if (failed) {
                return full == Weight.NOTHING_FOUND ? full : Weight.COULD_NOT_BE_ASSESSED;
            }
            return switch (truth) {
                case TRUE -> full;
                case UNKNOWN -> rule.unknownWeightOn(step);
                case FALSE -> Weight.NOTHING_FOUND;
            };
        }

        Weight on(Service service) {
            return waitsFor(service) ? Weight.NOTHING_FOUND : Weight.heaviest(service.steps().stream().map(this::weightOn).toList());
        }

        boolean touches(Service service) {
            return service.steps().stream().anyMatch(step -> rule.weightOn(step) != Weight.NOTHING_FOUND);
        }

        List<String> notAskedFor(Service service) {
            return touches(service)
                ? notAsked().filter(q -> q.putFor(service.chemistries())).map(NotAsked::question).toList() : List.of();
        }

        List<String> unansweredFor(Service service) {
            return touches(service) ? read.stream().flatMap(value -> value.unanswered().stream()).toList() : List.of();
        }

        List<Finding> finding(List<Service> offered) {
            Map<String, Weight> byStep = new LinkedHashMap<>();
            offered.stream().filter(service -> !waitsFor(service)).flatMap(service -> service.steps().stream())
                .filter(step -> weightOn(step) != Weight.NOTHING_FOUND)
                .forEach(step -> byStep.put(step.id(), weightOn(step)));
            return byStep.isEmpty() ? List.of() : List.of(new Finding(rule.id(), Weight.heaviest(byStep.values()), byStep, causes(),
                decided.stream().map(FactValue::fact).toList(), rule.demands(), rule.sources(), truth == Truth.UNKNOWN));
        }

        private List<String> causes() {
            return new ArrayList<>(new LinkedHashSet<>(decided.stream().flatMap(value -> value.causes().stream()).toList()));
        }
    }
}
