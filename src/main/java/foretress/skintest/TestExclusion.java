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
import java.util.Set;
import java.util.stream.Stream;

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
    List<Finding> against(Assessment assessment, Set<String> booked) {
        return new Looked(assessment, knowledge.chemistries().testedAmong(booked)).against();
    }

    boolean mustNot(Assessment assessment, Set<String> booked) {
        return new Looked(assessment, knowledge.chemistries().testedAmong(booked)).mustNot();
    }

    /** One client, and the dyes the test would be made for. */
    private final class Looked {
        private final Assessment assessment;
        private final List<String> dyes;

        Looked(Assessment assessment, List<String> dyes) {
            this.assessment = assessment;
            this.dyes = dyes;
        }

        boolean mustNot() {
            return !against().isEmpty() || leftOut();
        }

        List<Finding> against() {
            List<Finding> known = assessment.findings().stream().filter(finding -> !finding.onlyIfUnknown()).toList();
            List<Finding> prevents = known.stream().filter(f -> onDye(f).atLeast(Weight.PREVENTS)).toList();
            return !prevents.isEmpty() ? prevents
                : known.stream()
                    .filter(finding -> waits(finding) || leftOut() && (calls(finding) || leavesOut(finding)))
                    .toList();
        }

        private Weight onDye(Finding finding) {
            return rules().rule(finding.ruleId()).map(this::onDye).orElse(Weight.NOTHING_FOUND);
        }

        private Weight onDye(Rule rule) {
            return Weight.heaviest(
                dyes.stream().map(dye -> rule.weights().getOrDefault(dye, Weight.NOTHING_FOUND)).toList());
        }

        /** No test is made before the word that it asks for. */
        private boolean waits(Finding finding) {
            return onDye(finding).atLeast(Weight.TEST_FIRST)
                && rules().rule(finding.ruleId()).filter(Rule::wordFirst).isPresent();
        }

        /** It keeps a dye waiting over the very thing for which no skin test is asked of this client. */
        private boolean leavesOut(Finding finding) {
            Set<String> read = rules().rule(finding.ruleId()).map(rule -> rule.when().reads()).orElse(Set.of());
            return onDye(finding).atLeast(Weight.TEST_FIRST)
                && asking().anyMatch(rule -> !Collections.disjoint(rule.when().reads(), read));
        }

        /** Every rule that asks for a skin test is false for this client, even as if none had been made. */
        private boolean leftOut() {
            FactDef test = rules().fact(TestFact.SKIN_TEST).orElseThrow();
            Facts undone = assessment.facts().with(FactValue.known(test, ANSWER, List.of()));
            return asking().allMatch(rule -> rule.when().of(undone) == Truth.FALSE);
        }

        private Stream<Rule> asking() {
            return rules().rules().stream().filter(rule -> rule.demands().contains(TestFact.SKIN_TEST))
                .filter(rule -> rule.when().reads().contains(TestFact.SKIN_TEST))
                .filter(rule -> onDye(rule) != Weight.NOTHING_FOUND);
        }
    }

    private boolean calls(Finding finding) {
        return rules().rule(finding.ruleId()).filter(Rule::calls).isPresent();
    }

    private RuleSet rules() {
        return knowledge.ruleSet();
    }
}
