package foretress.skintest;

import foretress.assessment.Assessment;
import foretress.assessment.FactDef;
import foretress.assessment.FactValue;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.TestFact;
import foretress.assessment.Truth;
import foretress.assessment.Weight;
import foretress.knowledge.Knowledge;
import jakarta.inject.Singleton;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Whom a salon must not test: who has reacted, who is too young, whose skin is not whole today. The rules say so themselves:
 * the one that asks for a skin test leaves these people out, and others prevent the dye. The test could itself bring a reaction.
 */
@Singleton
class TestExclusion {
    private static final String ANSWER = "not-done";

    private final Knowledge knowledge;

    TestExclusion(Knowledge knowledge) {
        this.knowledge = knowledge;
    }

    /** What is known to stand against a test, the heaviest first; empty when a test may be made. */
    List<Finding> against(Assessment assessment) {
        List<Finding> prevents =
            assessment.findings().stream().filter(finding -> !finding.onlyIfUnknown() && prevents(finding)).toList();
        return !prevents.isEmpty() || !leftOut(assessment.facts()) ? prevents
            : assessment.findings().stream().filter(finding -> !finding.onlyIfUnknown())
                .filter(finding -> calls(finding) || leavesOut(finding)).toList();
    }

    boolean mustNot(Assessment assessment) {
        return !against(assessment).isEmpty() || leftOut(assessment.facts());
    }

    private boolean prevents(Finding finding) {
        return onDye(finding).atLeast(Weight.PREVENTS);
    }

    private Weight onDye(Finding finding) {
        Map<String, Weight> weights = rules().rule(finding.ruleId()).map(Rule::weights).orElse(Map.of());
        return Weight.heaviest(knowledge.chemistries().needingSkinTest().stream()
            .map(dye -> weights.getOrDefault(dye, Weight.NOTHING_FOUND)).toList());
    }

    /** It keeps a dye waiting over the very thing for which no skin test is asked of this client. */
    private boolean leavesOut(Finding finding) {
        Set<String> read = rules().rule(finding.ruleId()).map(rule -> rule.when().reads()).orElse(Set.of());
        return onDye(finding).atLeast(Weight.TEST_FIRST)
            && asking().stream().anyMatch(rule -> !Collections.disjoint(rule.when().reads(), read));
    }

    private boolean calls(Finding finding) {
        return rules().rule(finding.ruleId()).filter(Rule::calls).isPresent();
    }

    /** Every rule that asks for a skin test is false for this client, even as if none had been made. */
    private boolean leftOut(Facts facts) {
        FactDef test = rules().fact(TestFact.SKIN_TEST).orElseThrow();
        Facts undone = facts.with(FactValue.known(test, ANSWER, List.of()));
        return asking().stream().allMatch(rule -> rule.when().of(undone) == Truth.FALSE);
    }

    private List<Rule> asking() {
        return rules().rules().stream().filter(rule -> rule.demands().contains(TestFact.SKIN_TEST))
            .filter(rule -> rule.when().reads().contains(TestFact.SKIN_TEST)).toList();
    }

    private RuleSet rules() {
        return knowledge.ruleSet();
    }
}
