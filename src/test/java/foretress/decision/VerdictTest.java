package foretress.decision;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictTest {
    private static Gate.Weighing weighs(Weight weight) {
        return new Gate.Weighing(null, weight, false, Optional.empty());
    }

    @Test
    void theHairIsWorkedOnAfterTwoOfTheFour() {
        assertThat(Arrays.stream(Verdict.values()).filter(Verdict::goesAhead)).containsExactly(Verdict.PROCEED,
            Verdict.PROCEED_WITH_CHANGES);
    }

    @Test
    void everyVerdictIsReadBackFromItsCodeAndNothingElseIsOne() {
        assertThat(Arrays.stream(Verdict.values()).map(Verdict::code)).containsExactly("proceed",
            "proceed-with-changes", "postpone", "decline");
        assertThat(Arrays.stream(Verdict.values()).flatMap(verdict -> Verdict.of(verdict.code()).stream()))
            .containsExactly(Verdict.values());
        assertThat(Verdict.of("PROCEED")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({ "NOTHING_FOUND, false", "NOTE, false", "RESTRICTS, false", "TEST_FIRST, true",
        "COULD_NOT_BE_ASSESSED, true", "PREVENTS, true" })
    void whatAsksForATestAndAllThatWeighsMoreIsInTheWay(Weight weight, boolean inTheWay) {
        assertThat(weighs(weight).inTheWay()).isEqualTo(inTheWay);
    }

    @Test
    void aServiceStandsWhereItsHeaviestFindingPutsIt() {
        assertThat(Gate.standing(List.of())).isEqualTo(Weight.NOTHING_FOUND);
        assertThat(Gate.standing(List.of(weighs(Weight.NOTE), weighs(Weight.TEST_FIRST), weighs(Weight.RESTRICTS))))
            .isEqualTo(Weight.TEST_FIRST);
    }

    @Test
    void aRefusalNamesEveryReason() {
        Set<Refusal> why = Set.of(Refusal.NOT_SIGNED, Refusal.LASTING);
        assertThat(new Refusal.Refused(why).why()).isEqualTo(why);
        assertThat(new Refusal.Refused(why)).hasMessageContaining("NOT_SIGNED").hasMessageContaining("LASTING");
        assertThat(new Refusal.Refused(Refusal.OVER).why()).containsExactly(Refusal.OVER);
    }
}
