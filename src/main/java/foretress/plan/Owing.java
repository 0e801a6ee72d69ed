package foretress.plan;

import static foretress.assessment.TestFact.ADVICE;
import static foretress.assessment.TestFact.SKIN_TEST;

import foretress.assessment.Assessment;
import foretress.assessment.Assessor;
import foretress.assessment.ComputedAs;
import foretress.assessment.FactDef;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Situation;
import foretress.assessment.Standing;
import foretress.assessment.TestFact;
import foretress.assessment.Weight;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Which tests a client owes before what is booked: computed once, for the plan, the consent, the desk and every program.
 *
 * <p>Findings demand tests; a test is owed only where it can change something. That is asked of the assessor itself, with every
 * demanded test come out as well as it can: a service that is prevented even then owes none, and a demand that stands even
 * then cannot be met by testing.
 *
 * @param tests ids of the tests that are owed, in the order of the findings
 * @param waiting ids of tests that are demanded and would prove nothing now: something must be cleared up first
 * @param readAgainDays days after its start on which findings ask for another reading of a skin test; 0 when none does
 */
public record Owing(List<String> tests, List<String> waiting, int readAgainDays) {
    /** A good metal test asks for a cutting, and a good cutting for nothing more: no chain of demands is longer. */
    private static final int ROUNDS = 4;

    public Owing {
        tests = List.copyOf(tests);
        waiting = List.copyOf(waiting);
    }

    /**
     * @param facts finds the facts these rules read
     * @param known the client before the visit, with the tests on file
     * @param hoped the same with every question nobody has answered yet answered as well as it can be: an answer that is still to
     *     come makes no test useless
     * @param booked the services with their booked steps
     */
    public static Owing of(RuleSet rules, Function<Situation, Facts> facts, Situation known, Situation hoped,
        List<Service> booked) {
        Function<List<TestFact>, Assessment> with =
            more -> Assessor.assess(rules, facts.apply(hoped.tested(more)), booked);
        Assessment now = Assessor.assess(rules, facts.apply(known), booked);
        LocalDate day = known.today().plusDays(1);
        Assessment best = best(rules, now, booked, day, with, true);
        Assessment untold = best(rules, now, booked, day, with, false);
        Set<String> owed = new LinkedHashSet<>();
        Set<String> waiting = new LinkedHashSet<>();
        for (Service service : booked) {
            boolean ahead = weight(best, service) != Weight.PREVENTS;
            boolean wordFirst = wordFirst(rules, now, service);
            for (Finding finding : ahead ? asking(now, service) : List.<Finding>of()) {
                finding.demands().forEach(test -> (!(wordFirst && test.equals(SKIN_TEST))
                    && lifts(test, finding, test.equals(ADVICE) ? best : untold, service) ? owed : waiting).add(test));
            }
        }
        waiting.removeAll(owed);
        Assessment untested = known == hoped ? now : with.apply(List.of());
        return new Owing(List.copyOf(owed), List.copyOf(waiting), readAgain(rules, untested, booked));
    }

    /** What is known of the client keeps the product off the skin, even for a test, until somebody has said a word. */
    private static boolean wordFirst(RuleSet rules, Assessment now, Service service) {
        return now.on(service).stream()
            .filter(finding -> !finding.onlyIfUnknown() && finding.on(service).atLeast(Weight.TEST_FIRST))
            .anyMatch(finding -> rules.rule(finding.ruleId()).filter(Rule::wordFirst).isPresent());
    }

    /** Days after its start on which a finding on what is booked asks for another reading of a skin test; 0 when none does. */
    public static int readAgain(RuleSet rules, Assessment now, List<Service> booked) {
        return booked.stream().flatMap(service -> now.on(service).stream())
            .flatMap(finding -> rules.rule(finding.ruleId()).stream())
            .mapToInt(Rule::readAgainDays).max().orElse(0);
    }

    /** A service that is off owes only what could open it again. */
    private static List<Finding> asking(Assessment now, Service service) {
        boolean off = weight(now, service) == Weight.PREVENTS;
        return now.on(service).stream().filter(finding -> !off || finding.on(service) == Weight.PREVENTS).toList();
    }

    /** What has no outcome of its own, such as the check while a product develops, is owed while the service goes ahead. */
    private static boolean lifts(String test, Finding finding, Assessment best, Service service) {
        return !TestFact.OUTCOMES.containsKey(test)
            || best.on(service).stream().noneMatch(still -> still.ruleId().equals(finding.ruleId()));
    }

    /**
     * What a doctor has still to say is imagined only for what waits for that word: no test is made before it in the hope of it. Begun
     * on the first day that lies after everything the client can have told of.
     */
    private static Assessment best(RuleSet rules, Assessment now, List<Service> booked, LocalDate day,
        Function<List<TestFact>, Assessment> with, boolean told) {
        Set<String> imagined = new LinkedHashSet<>();
        Assessment best = now;
        for (int round = 0; round < ROUNDS && imagined.addAll(demanded(best, booked, told)); round++) {
            best = with.apply(well(rules, imagined, day));
        }
        return best;
    }

    private static List<String> demanded(Assessment assessment, List<Service> booked, boolean told) {
        return booked.stream().flatMap(service -> assessment.on(service).stream())
            .flatMap(finding -> finding.demands().stream())
            .filter(TestFact.OUTCOMES::containsKey).filter(test -> told || !test.equals(ADVICE)).toList();
    }

    /** Every test come out as well as it can, begun and read with nothing against it but what the answers say. */
    private static List<TestFact> well(RuleSet rules, Collection<String> tests, LocalDate day) {
        List<TestFact> well = new ArrayList<>();
        for (String test : tests) {
            if (test.equals(ADVICE)) {
                about(rules).forEach(
                    fact -> well.add(TestFact.advice(fact, TestFact.OUTCOMES.get(ADVICE).get(0), day, true, false)));
            } else {
                well.add(TestFact.sound(test, TestFact.OUTCOMES.get(test).get(0), day, day));
            }
        }
        return well;
    }

    /** What a doctor can be asked about. */
    private static List<String> about(RuleSet rules) {
        return rules.facts().stream().flatMap((FactDef def) -> def.computation().stream())
            .filter(how -> how.as() == ComputedAs.MEDICAL_ADVICE)
            .flatMap(how -> how.of().stream()).distinct().toList();
    }

    private static Weight weight(Assessment assessment, Service service) {
        return assessment.standing(service.id()).map(Standing::weight).orElse(Weight.COULD_NOT_BE_ASSESSED);
    }
}
