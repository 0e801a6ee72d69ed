package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.assessment.TestFact;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What can be tried at the bench, and what cannot be")
class BenchKindTest {
    @Test
    void everyKindIsReadBackFromItsCodeAndNothingElseIsOne() {
        assertThat(Arrays.stream(BenchKind.values()).flatMap(kind -> BenchKind.of(kind.code()).stream()))
            .containsExactly(BenchKind.values());
        assertThat(BenchKind.of("skin-test")).isEmpty();
    }

    @Test
    void whateverHasOutcomesAndIsTriedOnHairHasItsKind() {
        assertThat(TestFact.OUTCOMES.keySet()).contains(BenchKind.METAL.code(), BenchKind.ELASTICITY.code(),
            BenchKind.POROSITY.code(), BenchKind.CUTTING.code());
    }

    @Test
    void threeKindsAreWatchedByTheClockAndOneOfThemIsOnTheHead() {
        assertThat(Arrays.stream(BenchKind.values()).filter(BenchKind::isWatched)).containsExactly(BenchKind.METAL,
            BenchKind.CUTTING, BenchKind.STRAND);
        assertThat(Arrays.stream(BenchKind.values()).filter(BenchKind::onTheHead)).containsExactly(BenchKind.STRAND);
    }

    @Test
    void aReactionAndNothingAtAllShutTheDoor() {
        assertThat(Arrays.stream(MetalCheck.Result.values()).filter(MetalCheck.Result::shuts))
            .containsExactly(MetalCheck.Result.NOTHING_HAPPENED, MetalCheck.Result.REACTION);
    }

    @Test
    void nothingIsSeenBeforeTheTuftsWentInAndNoBathRanLessThanNoTime() {
        assertThat(new Seen("A", TuftSign.NOTHING, 0).alarming()).isFalse();
        assertThatThrownBy(() -> new Seen("A", TuftSign.NOTHING, -1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new MetalCheck(List.of(), List.of(), List.of(), 0, Optional.empty()).result())
            .isEqualTo(MetalCheck.Result.RUNNING);
        assertThatThrownBy(() -> new MetalCheck(List.of(), List.of(), List.of(), -1, Optional.empty()))
            .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aTestOfNoHairInQuestionIsNeverWholeHoweverTheControlDid() {
        var control = new Tuft("C", Tuft.Kind.CONTROL, 0, 2, true);
        var test = new MetalCheck(List.of(control), List.of(),
            List.of(new Seen("C", TuftSign.SLIGHTLY_LIGHTER, 600)), MetalCheck.FULL_SECONDS, Optional.of(Set.of()));
        assertThat(test.gaps()).containsExactly(MetalCheck.Gap.STRETCH_WITHOUT_TUFT);
        assertThat(test.result()).isEqualTo(MetalCheck.Result.NOT_WHOLE);
    }

    @Test
    void nothingIsToReadBeforeTheTimeIsOver() {
        var tuft = new Tuft("A", Tuft.Kind.SUSPECT, 20, 26, true);
        assertThat(new MetalCheck(List.of(tuft), List.of(), List.of(), MetalCheck.FULL_SECONDS - 1, Optional.empty())
            .toRead()).isEmpty();
    }

    @Test
    void aTuftBeginsOnTheHeadAndEndsBeyondItsBeginning() {
        assertThat(new Tuft("A", Tuft.Kind.SUSPECT, 0, 0.5, true).lightens(false).couldLighten()).isFalse();
        assertThatThrownBy(() -> new Tuft("A", Tuft.Kind.SUSPECT, 3, 3, true)).isInstanceOf(Impossible.class)
            .satisfies(e -> assertThat(((Impossible) e).reason()).isEqualTo(Impossible.Reason.NOT_A_STRETCH));
        assertThatThrownBy(() -> new Tuft("A", Tuft.Kind.SUSPECT, -0.5, 3, true)).isInstanceOf(Impossible.class);
    }

    @Test
    void whatCannotBeIsSaidWithAtMostTwoDecimalsAndNoneThatSaysNothing() {
        assertThat(new Impossible(Impossible.Reason.NOT_A_STRETCH, 100, 0.126).values()).containsExactly("100", "0.13");
        assertThat(new Impossible(Impossible.Reason.NOT_A_STRETCH, Double.NaN, 2.50).values()).containsExactly("NaN",
            "2.5");
    }

    @Test
    void aSaltIsHeavierThanItsBase() {
        assertThatThrownBy(() -> new DyeSalt(100, 100)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DyeSalt(0, 100)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void hairIsLeftFromOneMinuteToThreeHoursInADeveloperThatExists() {
        assertThat(trial(0, 1).result()).contains(Trial.Result.GOOD);
        assertThat(trial(50, 180).result()).contains(Trial.Result.GOOD);
        assertThatThrownBy(() -> trial(6, 181)).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> trial(50.1, 30)).isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> trial(-0.1, 30)).isInstanceOf(Impossible.class);
    }

    @Test
    void aTuftThatReactedIsReadSoHoweverLongItRan() {
        var tuft = new Tuft("A", Tuft.Kind.SUSPECT, 20, 26, true);
        var test = new MetalCheck(List.of(tuft), List.of(), List.of(new Seen("A", TuftSign.HEAT, 20)), 20,
            Optional.empty());
        assertThat(test.at(tuft)).isEqualTo(MetalCheck.TuftResult.REACTION);
    }

    @Test
    void lengthsAreKeptToATenthOfAMillimetre() {
        var pull = new Pull(Part.ENDS, false, 100.04, 119.96, Pull.Ending.SPRANG_BACK);
        assertThat(List.of(pull.restMm(), pull.stretchedMm())).containsExactly(100.0, 120.0);
        assertThat(pull.strength()).isEqualTo(Strength.PASS);
    }

    @Test
    void theRecipesAreAsTheirSourcesGiveThem() {
        assertThat(Bath.Recipe.TWENTY_TO_ONE.peroxideMl()).isEqualTo(40);
        assertThat(Bath.Recipe.DROPS.peroxideMl()).isEqualTo(29.57);
    }

    private static Trial trial(double percent, int minutes) {
        return new Trial("Invented 6-0", percent, minutes, Trial.Colour.AS_PLANNED, Trial.Condition.AS_BEFORE,
            Trial.Bounce.SPRANG_BACK);
    }
}
