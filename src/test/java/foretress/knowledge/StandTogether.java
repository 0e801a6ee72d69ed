package foretress.knowledge;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.Condition.Op;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.KnownTreatments;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Truth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which findings on a common fact are shown beside each other on some step, as the program itself decides it: for every two rules
 * that share a fact every range of all their facts is tried, as far as the two tell classes apart. Everything else about the client
 * is at its best.
 */
final class StandTogether {
    /** Beyond so many combinations a fact is known, or one of two neighbours, or not known at all. */
    private static final int MOST_COMBINATIONS = 2_000;

    private static final Facts NOTHING = new Facts(Map.of());

    private final RuleSet rules;
    private final Service everything;
    private final Map<Set<String>, RuleSet> subsets = new HashMap<>();
    private final TreeMap<String, Pair> pairs = new TreeMap<>();
    private final Set<String> neverHeard = new TreeSet<>();

    /** Two findings that are read together; surely or perhaps tells which of their words. */
    record Pair(Finding one, Finding other) {
        String key() {
            return "%s + %s".formatted(said(one), said(other));
        }

        static String said(Finding finding) {
            return finding.ruleId() + (finding.onlyIfUnknown() ? " (perhaps)" : "");
        }
    }

    StandTogether(RuleSet rules) {
        this.rules = rules;
        this.everything = new Service("everything", rules.steps());
        // What reads no fact shares none with another: it is heard wherever it weighs.
        rules.rules().stream().filter(rule -> !about(rule).isEmpty()).forEach(rule -> neverHeard.add(rule.id()));
        for (Rule one : rules.rules()) {
            rules.rules().stream()
                .filter(other -> one.id().compareTo(other.id()) <= 0
                    && !Collections.disjoint(parts(about(one)), parts(about(other))))
                .forEach(other -> walk(one, other));
        }
    }

    /** By their keys, in the order of the alphabet. */
    TreeMap<String, Pair> pairs() {
        return pairs;
    }

    /** Rules whose words nobody ever reads. */
    Set<String> neverHeard() {
        return neverHeard;
    }

    private static Set<String> about(Rule rule) {
        Set<String> facts = new LinkedHashSet<>(rule.when().reads());
        rule.speaks().ifPresent(words -> facts.addAll(words.reads()));
        return facts;
    }

    private static Set<String> parts(Set<String> facts) {
        return facts.stream().flatMap(Sums::parts).map(FactDef::id)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A sum stands by its parts only where one of the two reads such a part itself. */
    private static Set<String> both(Rule one, Rule other) {
        Set<String> facts = about(one);
        facts.addAll(about(other));
        return facts.stream()
            .flatMap(id -> Sums.parts(id).map(FactDef::id).anyMatch(facts::contains) ? Sums.parts(id).map(FactDef::id)
                : Stream.of(id))
            .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void walk(Rule one, Rule other) {
        Set<String> facts = both(one, other);
        RuleSet onThese = subsets.computeIfAbsent(facts, this::rulesOn);
        List<List<FactValue>> ranges = ranges(facts, List.of(one, other), false);
        if (ranges.stream().mapToLong(List::size).reduce(1, (a, b) -> a * b) > MOST_COMBINATIONS) {
            ranges = ranges(facts, List.of(one, other), true);
        }
        Set<List<Truth>> seen = new HashSet<>();
        each(NOTHING, ranges, 0, parts -> {
            Facts tried = Sums.settled(parts);
            List<Truth> truths = List.of(one.when().of(tried), other.when().of(tried));
            if (!truths.contains(Truth.FALSE) && !seen.contains(truths)
                && note(one, other, Assessor.assess(onThese, tried, List.of(everything)))) {
                seen.add(truths);
            }
        });
    }

    /** All rules that read no other facts: one of them may speak for either of the two. */
    private RuleSet rulesOn(Set<String> facts) {
        return new RuleSet(rules.facts(), KnownTreatments.NONE,
            rules.rules().stream().filter(rule -> about(rule).stream()
                .allMatch(id -> facts.contains(id) || facts.containsAll(parts(Set.of(id))))).toList(),
            rules.steps(),
            List.of(), rules.tests(), rules.sources(), "");
    }

    private List<List<FactValue>> ranges(Set<String> facts, List<Rule> two, boolean coarse) {
        return facts.stream().map(id -> rules.fact(id).orElseThrow()).map(def -> ranges(def, two, coarse)).toList();
    }

    /** One range for each that the two rules can tell from another. */
    private static List<FactValue> ranges(FactDef def, List<Rule> two, boolean coarse) {
        List<Integer> classes = List.copyOf(toldApart(def, two));
        boolean known = def.rows().isEmpty()
            && def.isAlwaysKnown();
        List<FactValue> ranges = new ArrayList<>();
        for (int best = 0; best < classes.size(); best++) {
            for (int worst = best; worst < (known ? best + 1 : classes.size()); worst++) {
                if (!coarse || worst <= best + 1 || best == 0 && worst == classes.size() - 1) {
                    ranges.add(FactValue.between(def, classes.get(best), classes.get(worst), List.of()));
                }
            }
        }
        return ranges;
    }

    /** The first class of each stretch that all conditions of the two treat alike, and the worst class of all. */
    private static TreeSet<Integer> toldApart(FactDef def, List<Rule> two) {
        TreeSet<Integer> cuts = new TreeSet<>(Set.of(0, def.worst()));
        two.stream().flatMap(rule -> rule.when().reads().stream()).flatMap(id -> Sums.from(id, def).stream())
            .forEach(cuts::add);
        two.stream()
            .flatMap(rule -> Stream.concat(rule.when().compares().stream(),
                rule.speaks().stream().flatMap(words -> words.compares().stream())))
            .filter(compare -> compare.fact().equals(def.id()))
            .forEach(compare -> (compare.op() == Op.EQUAL || compare.op() == Op.NOT_EQUAL
                || compare.op() == Op.GREATER || compare.op() == Op.LESS_OR_EQUAL
                    ? Stream.of(compare.ordinal(), compare.ordinal() + 1)
                    : Stream.of(compare.ordinal()))
                .filter(cut -> cut <= def.worst()).forEach(cuts::add));
        return cuts;
    }

    private static void each(Facts facts, List<List<FactValue>> ranges, int place, Consumer<Facts> tried) {
        if (place == ranges.size()) {
            tried.accept(facts);
            return;
        }
        ranges.get(place).forEach(value -> each(facts.with(value), ranges, place + 1, tried));
    }

    /** Whether both are heard, on a step they share. */
    private boolean note(Rule one, Rule other, Assessment assessment) {
        Optional<Finding> first = spoken(one, assessment);
        Optional<Finding> second = spoken(other, assessment);
        Stream.of(first, second).flatMap(Optional::stream).forEach(finding -> neverHeard.remove(finding.ruleId()));
        boolean together = first.isPresent() && second.isPresent() && onACommonStep(first.get(), second.get());
        if (one != other && together) {
            var pair = new Pair(first.get(), second.get());
            pairs.putIfAbsent(pair.key(), pair);
        }
        return together;
    }

    private static Optional<Finding> spoken(Rule rule, Assessment assessment) {
        return assessment.finding(rule.id()).filter(Finding::speaks);
    }

    private static boolean onACommonStep(Finding one, Finding other) {
        return one.byStep().keySet().stream().anyMatch(step -> other.byStep().containsKey(step)
            && !one.silentOn().contains(step) && !other.silentOn().contains(step));
    }
}
