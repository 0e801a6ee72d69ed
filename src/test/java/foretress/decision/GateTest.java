package foretress.decision;

import static foretress.assessment.Weight.NOTE;
import static foretress.assessment.Weight.PREVENTS;
import static foretress.assessment.Weight.RESTRICTS;
import static foretress.assessment.Weight.TEST_FIRST;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Condition;
import foretress.assessment.FactDef;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.KnownTreatments;
import foretress.assessment.Rule;
import foretress.assessment.RuleSet;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import foretress.intake.EarlierFindings.Earlier;
import foretress.visit.State;
import foretress.visit.Unstored;
import foretress.visit.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What stands between a visit and a decision, without a store")
class GateTest {
    private static final Instant NOW = Instant.parse("2026-06-10T09:00:00Z");
    private static final LocalDate THEN = LocalDate.of(2026, 6, 11);
    private static final Service COLOUR = new Service("colour", List.of(new Step("tint", Set.of("oxidative-dye"))));
    private static final Service BLEACH = new Service("bleach", List.of(new Step("lift", Set.of("persulfate"))));
    private static final FactDef METAL =
        new FactDef("metal", List.of("none", "suspected"), List.of(), Optional.empty());
    private static final RuleSet RULES = new RuleSet(List.of(METAL), KnownTreatments.NONE,
        List.of(rule("passing", false), rule("for-good", true), rule("asks", false)),
        List.of(COLOUR.steps().get(0), BLEACH.steps().get(0)), List.of(COLOUR, BLEACH), List.of(), Map.of(), "0");

    private static Rule rule(String id, boolean lasting) {
        return new Rule(id, new Condition.Compare("metal", Condition.Op.EQUAL, "suspected", 1),
            Map.of("oxidative-dye", TEST_FIRST), Optional.empty(), List.of(), List.of("s"), lasting, false);
    }

    private static Finding finding(String rule, Weight weight, String... demands) {
        return on("tint", rule, weight, demands);
    }

    private static Finding on(String step, String rule, Weight weight, String... demands) {
        return new Finding(rule, weight, Map.of(step, weight), List.of(), List.of(), List.of(demands), List.of("s"),
            false, List.of(), List.of());
    }

    private static Finding silent(String rule, Weight weight, String... demands) {
        return new Finding(rule, weight, Map.of("tint", weight), List.of(), List.of(), List.of(demands), List.of("s"),
            false, List.of("tint"), List.of());
    }

    private static Assessment found(Finding... findings) {
        return new Assessment("hash", Facts.of(List.of()), List.of(findings), List.of());
    }

    private static List<Gate.Weighing> weighed(Assessment now, List<Earlier> earlier, String... refused) {
        return Gate.weighed(now, earlier, COLOUR, Set.of(refused), RULES);
    }

    private static Gate.Weighing one(Finding finding, String... refused) {
        return weighed(found(finding), List.of(), refused).get(0);
    }

    @Test
    void todaysFindingsAndThoseThatStillStandAreWeighedOnTheServiceTheHeaviestFirst() {
        Finding note = finding("passing", NOTE);
        Finding earlier = finding("asks", TEST_FIRST);
        List<Gate.Weighing> on = weighed(found(note, on("lift", "for-good", PREVENTS)),
            List.of(new Earlier(earlier, Unstored.visit(NOW)), new Earlier(on("lift", "asks", PREVENTS),
                Unstored.visit(NOW))));
        assertThat(on).extracting(Gate.Weighing::finding).as("what weighs on another service alone is left out")
            .containsExactly(earlier, note);
        assertThat(on).extracting(Gate.Weighing::foundOn).containsExactly(Optional.of(THEN), Optional.empty());
    }

    @Test
    void nobodyGoesAgainstWhatLastsAndIsInTheWay() {
        assertThat(one(finding("for-good", TEST_FIRST)).lasting()).isTrue();
        assertThat(one(finding("for-good", RESTRICTS)).lasting()).as("it is not in the way").isFalse();
        assertThat(one(finding("passing", PREVENTS)).lasting()).isFalse();
        assertThat(one(finding("no rule of today", PREVENTS)).lasting()).as("who cannot be asked lasts").isTrue();
    }

    @Test
    void aRefusedTestIsGoneAgainstByNobodyWhereItIsInTheWay() {
        assertThat(one(finding("asks", TEST_FIRST, "skin-test")).lasting()).isFalse();
        assertThat(one(finding("asks", TEST_FIRST, "skin-test"), "skin-test").lasting()).isTrue();
        assertThat(one(finding("asks", TEST_FIRST, "metal-test"), "skin-test").lasting()).isFalse();
        assertThat(one(finding("asks", NOTE, "skin-test"), "skin-test").lasting()).isFalse();
        assertThat(one(finding("asks", TEST_FIRST, "skin-test"), "skin-test").weight()).isEqualTo(TEST_FIRST);
    }

    @Test
    void aHeavierFindingSpeaksForAnotherButNeverForOneThatAsksForARefusedTest() {
        Assessment silent = found(silent("asks", TEST_FIRST, "skin-test"));
        assertThat(weighed(silent, List.of())).isEmpty();
        assertThat(weighed(silent, List.of(), "skin-test")).hasSize(1);
    }

    @Test
    void whatWasSignedHoldsWhileFindingsAndTestsAreTheSame() {
        List<Service> planned = List.of(COLOUR);
        Assessment then = found(finding("asks", TEST_FIRST, "skin-test"), on("lift", "passing", NOTE, "cutting"));
        assertThat(Signature.changed(Optional.of(then), then, planned)).isEmpty();
        assertThat(Signature.changed(Optional.empty(), then, planned)).as("nobody kept what was signed")
            .containsExactlyInAnyOrder(Signature.Changed.FINDINGS, Signature.Changed.TESTS);
        assertThat(Signature.changed(Optional.of(then), found(finding("asks", TEST_FIRST, "cutting")), planned))
            .containsExactly(Signature.Changed.TESTS);
        assertThat(Signature.changed(Optional.of(then), found(finding("asks", NOTE, "skin-test")), planned))
            .containsExactly(Signature.Changed.FINDINGS);
        assertThat(Signature.changed(Optional.of(then), found(finding("asks", TEST_FIRST, "skin-test"),
            on("lift", "passing", NOTE, "another")), planned)).as("a test for another service").isEmpty();
    }

    private static Visit decided(ServiceDecision... services) {
        Visit visit = Unstored.visit(NOW);
        Arrays.asList(State.INVITED, State.ANSWERING, State.SIGNED).forEach(visit::moveTo);
        Decisions.follow(visit, List.of(services));
        return visit;
    }

    private static ServiceDecision service(Verdict verdict, LocalDate until) {
        return new ServiceDecision("colour", List.of("tint"), Optional.empty(), NOTE, verdict,
            Optional.ofNullable(until), "", Optional.empty(), List.of());
    }

    @Test
    void aVisitIsPutOffUntilTheLastDayWhenNothingOfItGoesAhead() {
        Visit off = decided(service(Verdict.POSTPONE, THEN), service(Verdict.POSTPONE, THEN.plusDays(9)),
            service(Verdict.DECLINE, null));
        assertThat(off.state).isEqualTo(State.DECIDED);
        assertThat(off.postponed).isTrue();
        assertThat(off.postponedUntil()).contains(THEN.plusDays(9));
        Visit half = decided(service(Verdict.POSTPONE, THEN), service(Verdict.PROCEED, null));
        assertThat(half.postponed).isFalse();
        Decisions.follow(off, List.of(service(Verdict.PROCEED, null)));
        assertThat(off.postponed).as("decided again, it takes place").isFalse();
        assertThat(off.state).isEqualTo(State.DECIDED);
    }
}
