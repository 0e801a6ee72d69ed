package foretress.decision;

import static foretress.assessment.Weight.NOTE;
import static foretress.assessment.Weight.NOTHING_FOUND;
import static foretress.assessment.Weight.PREVENTS;
import static foretress.assessment.Weight.RESTRICTS;
import static foretress.assessment.Weight.TEST_FIRST;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Assessment;
import foretress.assessment.Facts;
import foretress.assessment.Finding;
import foretress.assessment.Service;
import foretress.assessment.Step;
import foretress.assessment.Weight;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What one assessment finds and another does not, or weighs differently")
class DifferenceTest {
    private static final Service COLOUR = new Service("colour", List.of(new Step("tint", Set.of("oxidative-dye"))));
    private static final Service BLEACH = new Service("bleach", List.of(new Step("lift", Set.of("persulfate"))));

    private static Finding finding(String rule, String step, Weight weight, boolean unsure) {
        return new Finding(rule, weight, Map.of(step, weight), List.of(), List.of(), List.of(), List.of("s"), unsure,
            List.of(), List.of());
    }

    private static Assessment found(Finding... findings) {
        return new Assessment("hash", Facts.of(List.of()), List.of(findings), List.of());
    }

    private static List<Difference.Change> between(Assessment before, Assessment now) {
        return Difference.between(before, now, List.of(COLOUR, BLEACH)).changes();
    }

    @Test
    void theSameTwiceIsNoDifference() {
        Assessment one = found(finding("metal", "tint", TEST_FIRST, false));
        assertThat(between(one, found(finding("metal", "tint", TEST_FIRST, false)))).isEmpty();
        assertThat(Difference.between(one, one, List.of(COLOUR)).none()).isTrue();
    }

    @Test
    void whatIsNewWeighedNothingBeforeAndWhatIsGoneWeighsNothingNow() {
        Assessment one = found(finding("metal", "tint", TEST_FIRST, true));
        assertThat(between(found(), one))
            .containsExactly(new Difference.Change("metal", true, NOTHING_FOUND, TEST_FIRST));
        assertThat(between(one, found()))
            .containsExactly(new Difference.Change("metal", true, TEST_FIRST, NOTHING_FOUND));
        assertThat(Difference.between(found(), one, List.of(COLOUR)).none()).isFalse();
    }

    @Test
    void theLaterFindingSaysWhetherItIsSure() {
        assertThat(between(found(finding("metal", "tint", NOTE, true)),
            found(finding("metal", "tint", PREVENTS, false))))
            .containsExactly(new Difference.Change("metal", false, NOTE, PREVENTS));
    }

    @Test
    void onlyWhatIsPlannedIsLookedAtAndThereTheHeaviestService() {
        Assessment before = found(finding("metal", "lift", TEST_FIRST, false));
        assertThat(Difference.between(before, found(), List.of(COLOUR)).none()).isTrue();
        assertThat(Difference.between(before, found(), List.of(COLOUR, BLEACH)).none()).isFalse();
    }

    @Test
    void theHeaviestChangeComesFirstWhicheverWayItWent() {
        assertThat(
            between(found(finding("gone", "tint", PREVENTS, false), finding("lighter", "tint", RESTRICTS, false)),
                found(finding("lighter", "tint", NOTE, false), finding("new", "lift", TEST_FIRST, false))))
            .extracting(Difference.Change::ruleId).containsExactly("gone", "new", "lighter");
    }

    @Test
    void onlyWhatGainedWeightIsHeavier() {
        assertThat(new Difference.Change("metal", false, NOTE, RESTRICTS).heavier()).isTrue();
        assertThat(new Difference.Change("metal", false, RESTRICTS, NOTE).heavier()).isFalse();
        assertThat(new Difference.Change("metal", false, NOTE, NOTE).heavier()).isFalse();
    }
}
