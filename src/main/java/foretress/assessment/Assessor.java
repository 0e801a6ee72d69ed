package foretress.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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
        Offers offers = Offers.of(rules, offered);
        List<Outcome> outcomes = outcomes(rules, facts);
        List<Finding> findings = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            outcome.finding(offers).ifPresent(findings::add);
        }
        findings.sort(Comparator.comparing(Finding::weight).reversed());
        int unanswered = unanswered(facts);
        List<Standing> standings = offers.all().stream().map(offer -> standing(offer, outcomes, unanswered)).toList();
        return new Assessment(rules.hash(), facts, Voices.heard(rules, facts, findings), standings);
    }

    /** Of the rules that fire, or that would weigh on a service once its own questions were put. */
    private static List<Outcome> outcomes(RuleSet rules, Facts facts) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int number = 0; number < rules.rules().size(); number++) {
            Outcome outcome = Outcome.of(number, rules, facts);
            if (outcome.truth() != Truth.FALSE || !outcome.notAsked().isEmpty()) {
                outcomes.add(outcome);
            }
        }
        return outcomes;
    }

    private static int unanswered(Facts facts) {
        Set<String> unanswered = new HashSet<>();
        facts.byId().values().forEach(value -> unanswered.addAll(value.unanswered()));
        return unanswered.size();
    }

    private static Standing standing(Offer offer, List<Outcome> outcomes, int unanswered) {
        Weight heaviest = Weight.NOTHING_FOUND;
        List<String> deciding = new ArrayList<>();
        Set<String> notAsked = new LinkedHashSet<>();
        for (Outcome outcome : outcomes) {
            Weight weight = outcome.on(offer);
            if (weight.compareTo(heaviest) > 0) {
                heaviest = weight;
                deciding.clear();
            }
            if (weight == heaviest && weight != Weight.NOTHING_FOUND) {
                deciding.add(outcome.rule().id());
            }
            if (!outcome.notAsked().isEmpty() && outcome.touches(offer)) {
                outcome.notAsked().stream().filter(question -> question.putFor(offer.chemistries()))
                    .forEach(q -> notAsked.add(q.question()));
            }
        }
        return new Standing(offer.service().id(), heaviest, deciding, notAsked.size(), unanswered);
    }

    /**
     * All services looked at.
     *
     * @param steps of any of them, each once
     */
    private record Offers(List<Offer> all, List<Weighed> steps) {
        static Offers of(RuleSet rules, List<Service> offered) {
            Map<Step, Weighed> steps = new LinkedHashMap<>();
            for (Service service : offered) {
                service.steps().forEach(step -> steps.computeIfAbsent(step, one -> Weighed.of(rules, one)));
            }
            return new Offers(offered.stream().map(service -> Offer.of(service, steps)).toList(),
                List.copyOf(steps.values()));
        }
    }

    /** A service looked at, with what it uses and what each rule weighs on its steps. */
    private record Offer(Service service, Set<String> chemistries, List<Weighed> steps) {
        static Offer of(Service service, Map<Step, Weighed> steps) {
            return new Offer(service, service.chemistries(), service.steps().stream().map(steps::get).toList());
        }
    }

    /** What every rule weighs on one step, by the rule's number: when it surely holds, and when it may. */
    private record Weighed(String step, Weight[] surely, Weight[] perhaps) {
        static Weighed of(RuleSet rules, Step step) {
            return new Weighed(step.id(), rules.weights(step, Truth.TRUE), rules.weights(step, Truth.UNKNOWN));
        }
    }

    /**
     * How one rule comes out.
     *
     * @param number of the rule in its set
     * @param truth with everything unknown taken as unknown
     * @param asked with the questions not put taken as answered well
     */
    private record Outcome(int number, Rule rule, Facts facts, Truth truth, Truth asked, boolean failed,
        List<NotAsked> notAsked) {

        static Outcome of(int number, RuleSet rules, Facts facts) {
            Rule rule = rules.rules().get(number);
            List<String> reads = rules.reads(number);
            try {
                Truth truth = rule.when().of(facts);
                List<NotAsked> notAsked = notAsked(reads, facts);
                Truth asked = notAsked.isEmpty() ? truth
                    : rule.when().of(Facts.of(reads.stream().map(id -> facts.get(id).asAsked()).toList()));
                return new Outcome(number, rule, facts, truth, asked, false, notAsked);
            } catch (RuntimeException fault) {
                return new Outcome(number, rule, facts, Truth.TRUE, Truth.TRUE, true, List.of());
            }
        }

        private static List<NotAsked> notAsked(List<String> reads, Facts facts) {
            List<NotAsked> all = List.of();
            for (String id : reads) {
                List<NotAsked> some = facts.get(id).notAsked();
                if (!some.isEmpty()) {
                    all = Stream.concat(all.stream(), some.stream()).distinct().toList();
                }
            }
            return all;
        }

        /** The rule fires only because questions were not put that booking this service would have put. */
        boolean waitsFor(Offer offer) {
            if (notAsked.isEmpty() || truth != Truth.UNKNOWN || asked != Truth.FALSE) {
                return false;
            }
            for (NotAsked question : notAsked) {
                if (!question.putFor(offer.chemistries())) {
                    return false;
                }
            }
            return true;
        }

        Weight on(Offer offer) {
            Weight heaviest = Weight.NOTHING_FOUND;
            if (truth != Truth.FALSE && !waitsFor(offer)) {
                for (Weighed step : offer.steps()) {
                    heaviest = heaviest.heavier(on(step));
                }
            }
            return heaviest;
        }

        private Weight on(Weighed step) {
            Weight full = step.surely()[number];
            if (failed) {
                return full == Weight.NOTHING_FOUND ? full : Weight.COULD_NOT_BE_ASSESSED;
            }
            return switch (truth) {
                case TRUE -> full;
                case UNKNOWN -> step.perhaps()[number];
                case FALSE -> Weight.NOTHING_FOUND;
            };
        }

        boolean touches(Offer offer) {
            return offer.steps().stream().anyMatch(step -> step.surely()[number] != Weight.NOTHING_FOUND);
        }

        Optional<Finding> finding(Offers offers) {
            if (truth == Truth.FALSE) {
                return Optional.empty();
            }
            Map<String, Weight> byStep = byStep(offers);
            if (byStep.isEmpty()) {
                return Optional.empty();
            }
            List<FactValue> decided =
                failed ? List.of() : rule.when().deciding(facts).stream().map(facts::get).toList();
            return Optional.of(new Finding(rule.id(), Weight.heaviest(byStep.values()), byStep,
                gathered(decided, FactValue::causes), decided.stream().map(FactValue::fact).toList(), rule.demands(),
                rule.sources(), truth == Truth.UNKNOWN, List.of(), gathered(decided, FactValue::read)));
        }

        private Map<String, Weight> byStep(Offers offers) {
            Map<String, Weight> byStep = new LinkedHashMap<>();
            if (notAsked.isEmpty()) {
                weigh(offers.steps(), byStep);
                return byStep;
            }
            for (Offer offer : offers.all()) {
                if (!waitsFor(offer)) {
                    weigh(offer.steps(), byStep);
                }
            }
            return byStep;
        }

        private void weigh(List<Weighed> steps, Map<String, Weight> byStep) {
            for (Weighed step : steps) {
                Weight weight = on(step);
                if (weight != Weight.NOTHING_FOUND) {
                    byStep.putIfAbsent(step.step(), weight);
                }
            }
        }

        /** Of all the facts, each once. */
        private static <T> List<T> gathered(List<FactValue> decided, Function<FactValue, List<T>> each) {
            Set<T> all = new LinkedHashSet<>();
            decided.forEach(value -> all.addAll(each.apply(value)));
            return List.copyOf(all);
        }
    }
}
