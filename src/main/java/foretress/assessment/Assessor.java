package foretress.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

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
        List<Offer> offers = offered.stream().map(service -> new Offer(service, service.chemistries())).toList();
        List<Outcome> outcomes = rules.rules().stream().map(rule -> Outcome.of(rule, facts)).toList();
        List<Finding> findings = outcomes.stream().flatMap(outcome -> outcome.finding(offers).stream())
            .sorted(Comparator.comparing(Finding::weight).reversed()).toList();
        int unanswered = (int) facts.byId().values().stream().flatMap(value -> value.unanswered().stream()).distinct().count();
        List<Standing> standings = offers.stream().map(offer -> standing(offer, outcomes, unanswered)).toList();
        return new Assessment(rules.hash(), facts, findings, standings);
    }

    private static Standing standing(Offer offer, List<Outcome> outcomes, int unanswered) {
        Map<Weight, List<String>> byWeight = new EnumMap<>(Weight.class);
        Set<String> notAsked = new LinkedHashSet<>();
        for (Outcome outcome : outcomes) {
            byWeight.computeIfAbsent(outcome.on(offer), weight -> new ArrayList<>()).add(outcome.rule().id());
            if (!outcome.notAsked().isEmpty() && outcome.touches(offer)) {
                outcome.notAsked().stream().filter(question -> question.putFor(offer.chemistries())).forEach(q -> notAsked.add(q.question()));
            }
        }
        Weight heaviest = Weight.heaviest(byWeight.keySet());
        List<String> deciding = heaviest == Weight.NOTHING_FOUND ? List.of() : byWeight.get(heaviest);
        return new Standing(offer.service().id(), heaviest, deciding, notAsked.size(), unanswered);
    }

    /** A service looked at, with what it uses. */
    private record Offer(Service service, Set<String> chemistries) {}

    /**
     * How one rule comes out.
     *
     * @param truth with everything unknown taken as unknown
     * @param asked with the questions not put taken as answered well
     */
    private record Outcome(Rule rule, Truth truth, Truth asked, boolean failed, List<FactValue> decided, List<NotAsked> notAsked) {

        static Outcome of(Rule rule, Facts facts) {
            try {
                List<FactValue> read = rule.when().reads().stream().map(facts::get).toList();
                List<NotAsked> notAsked = read.stream().flatMap(value -> value.notAsked().stream()).distinct().toList();
                Truth truth = rule.when().of(facts);
                Truth asked = notAsked.isEmpty() ? truth : rule.when().of(Facts.of(read.stream().map(FactValue::asAsked).toList()));
                List<FactValue> decided = truth == Truth.FALSE ? List.of() : rule.when().deciding(facts).stream().map(facts::get).toList();
                return new Outcome(rule, truth, asked, false, decided, notAsked);
            } catch (RuntimeException fault) {
                return new Outcome(rule, Truth.TRUE, Truth.TRUE, true, List.of(), List.of());
            }
        }

        /** The rule fires only because questions were not put that booking this service would have put. */
        boolean waitsFor(Offer offer) {
            return truth == Truth.UNKNOWN && asked == Truth.FALSE && notAsked.stream().allMatch(question -> question.putFor(offer.chemistries()));
        }

        Weight on(Offer offer) {
            Weight heaviest = Weight.NOTHING_FOUND;
            if (truth != Truth.FALSE && !waitsFor(offer)) {
                for (Step step : offer.service().steps()) {
                    heaviest = heaviest.heavier(weightOn(step));
                }
            }
            return heaviest;
        }

        private Weight weightOn(Step step) {
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

        boolean touches(Offer offer) {
            return offer.service().steps().stream().anyMatch(step -> rule.weightOn(step) != Weight.NOTHING_FOUND);
        }

        Optional<Finding> finding(List<Offer> offers) {
            Map<String, Weight> byStep = new LinkedHashMap<>();
            if (truth != Truth.FALSE) {
                offers.stream().filter(offer -> !waitsFor(offer)).flatMap(offer -> offer.service().steps().stream())
                    .filter(step -> weightOn(step) != Weight.NOTHING_FOUND).forEach(step -> byStep.put(step.id(), weightOn(step)));
            }
            return byStep.isEmpty() ? Optional.empty() : Optional.of(new Finding(rule.id(), Weight.heaviest(byStep.values()), byStep, causes(),
                decided.stream().map(FactValue::fact).toList(), rule.demands(), rule.sources(), truth == Truth.UNKNOWN));
        }

        private List<String> causes() {
            return decided.stream().flatMap(value -> value.causes().stream()).distinct().toList();
        }
    }
}
