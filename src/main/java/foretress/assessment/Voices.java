package foretress.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One voice a fact. A rule that fires in worse classes too, and whose words are no longer true there, is silent while such a class
 * may hold: the heavier finding speaks. What is silent still weighs and demands.
 *
 * <p>Reckoned step by step: nothing is silent on a step unless what speaks there of the same fact weighs as much, so that no weight
 * ever stands without words.
 */
final class Voices {
    private final RuleSet rules;
    private final Facts facts;
    /** By rule, for the findings whose words are not surely true: what may speak for them where it weighs as much. */
    private final Map<String, List<Finding>> speakers = new HashMap<>();
    /** By rule; a rule has one finding. */
    private final Map<String, List<String>> silentOn = new HashMap<>();

    private Voices(RuleSet rules, Facts facts) {
        this.rules = rules;
        this.facts = facts;
    }

    /** The same findings in their order, each told where it is silent. */
    static List<Finding> heard(RuleSet rules, Facts facts, List<Finding> findings) {
        var voices = new Voices(rules, facts);
        List<Finding> untrue = findings.stream().filter(f -> !voices.wordsAreTrue(f)).toList();
        if (untrue.isEmpty()) {
            return findings;
        }
        Map<String, List<Finding>> byFact = new HashMap<>();
        findings.forEach(finding -> finding.facts()
            .forEach(fact -> byFact.computeIfAbsent(fact, one -> new ArrayList<>()).add(finding)));
        untrue.forEach(finding -> voices.speakers.put(finding.ruleId(), voices.speakersFor(finding, byFact)));
        Set<String> steps = new LinkedHashSet<>();
        untrue.forEach(finding -> steps.addAll(finding.byStep().keySet()));
        steps.forEach(step -> voices.hear(step, untrue));
        return findings.stream().map(voices::told).toList();
    }

    private Finding told(Finding finding) {
        List<String> silent = silentOn.get(finding.ruleId());
        return silent == null ? finding : finding.silentOn(silent);
    }

    private void hear(String step, List<Finding> untrue) {
        Set<String> heard = new HashSet<>();
        List<Finding> asked = untrue.stream().filter(f -> f.byStep().containsKey(step))
            .sorted(Comparator.comparing((Finding f) -> weight(f, step)).reversed()).toList();
        for (Finding finding : asked) {
            if (spokenFor(finding, step, heard)) {
                silentOn.computeIfAbsent(finding.ruleId(), rule -> new ArrayList<>()).add(step);
            } else {
                heard.add(finding.ruleId());
            }
        }
    }

    /** @param heard those whose words are not surely true, and who speak on this step all the same */
    private boolean spokenFor(Finding finding, String step, Set<String> heard) {
        for (Finding other : speakers.get(finding.ruleId())) {
            Weight weight = weight(other, step);
            if (weight != null && weight.atLeast(weight(finding, step))
                && (!speakers.containsKey(other.ruleId()) || heard.contains(other.ruleId()))) {
                return true;
            }
        }
        return false;
    }

    /** On the same fact, and as final: nobody goes against a final finding because another speaks. */
    private List<Finding> speakersFor(Finding finding, Map<String, List<Finding>> byFact) {
        boolean lasting = lasting(finding);
        return about(finding).stream().flatMap(fact -> byFact.getOrDefault(fact, List.of()).stream())
            .filter(other -> !lasting || lasting(other)).toList();
    }

    private boolean lasting(Finding finding) {
        return rules.rule(finding.ruleId()).filter(Rule::lasting).isPresent();
    }

    private static Weight weight(Finding finding, String step) {
        return finding.byStep().get(step);
    }

    private boolean wordsAreTrue(Finding finding) {
        return words(finding).map(this::surely).orElse(true);
    }

    private boolean surely(Condition words) {
        try {
            return words.of(facts) == Truth.TRUE;
        } catch (RuntimeException fault) {
            return false; // of a fact that could not be found nothing is sure
        }
    }

    private Set<String> about(Finding finding) {
        Set<String> facts = new HashSet<>(finding.facts());
        words(finding).ifPresent(words -> facts.addAll(words.reads()));
        return facts;
    }

    /** What must hold for its words to be true; a rule that could not be assessed speaks of that alone. */
    private Optional<Condition> words(Finding finding) {
        return finding.facts().isEmpty() ? Optional.empty() : rules.rule(finding.ruleId()).flatMap(Rule::speaks);
    }
}
