package foretress.assessment;

import static foretress.assessment.Truth.FALSE;
import static foretress.assessment.Truth.TRUE;
import static foretress.assessment.Truth.UNKNOWN;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Condition.And;
import foretress.assessment.Condition.Compare;
import foretress.assessment.Condition.Not;
import foretress.assessment.Condition.Op;
import foretress.assessment.Condition.Or;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A condition over facts that may not be known")
class ConditionWalkTest {
    private static final FactDef METAL = fact("metal", "none", "trace", "suspected");
    private static final FactDef SCALP = fact("scalp-now", "calm", "sore", "broken");
    private static final Condition SUSPECTED = new Compare("metal", Op.GREATER_OR_EQUAL, "suspected", 2);
    private static final Condition BROKEN = new Compare("scalp-now", Op.EQUAL, "broken", 2);

    private static FactDef fact(String id, String... classes) {
        return new FactDef(id, List.of(classes), List.of(), Optional.empty());
    }

    private static Facts facts(int metalBest, int metalWorst, int scalpBest, int scalpWorst) {
        return Facts.of(List.of(FactValue.between(METAL, metalBest, metalWorst, List.of()),
            FactValue.between(SCALP, scalpBest, scalpWorst, List.of())));
    }

    private static Facts metal(int best, int worst) {
        return facts(best, worst, 0, 0);
    }

    @ParameterizedTest
    @CsvSource({ "EQUAL, FALSE, TRUE, FALSE", "NOT_EQUAL, TRUE, FALSE, TRUE", "LESS, TRUE, FALSE, FALSE",
        "LESS_OR_EQUAL, TRUE, TRUE, FALSE", "GREATER, FALSE, FALSE, TRUE", "GREATER_OR_EQUAL, FALSE, TRUE, TRUE" })
    void aKnownFactIsHeldAgainstOneOfItsClasses(Op op, Truth below, Truth at, Truth above) {
        Condition compare = new Compare("metal", op, "trace", 1);
        assertThat(List.of(compare.of(metal(0, 0)), compare.of(metal(1, 1)), compare.of(metal(2, 2))))
            .containsExactly(below, at, above);
    }

    @Test
    void ofAFactThatIsNotKnownEveryReadingIsTried() {
        assertThat(SUSPECTED.of(metal(0, 2))).isEqualTo(UNKNOWN);
        assertThat(SUSPECTED.of(metal(0, 1))).isEqualTo(FALSE);
        assertThat(new Compare("metal", Op.GREATER, "none", 0).of(metal(1, 2))).isEqualTo(TRUE);
        assertThat(new Compare("metal", Op.NOT_EQUAL, "trace", 1).of(metal(0, 2))).as("a hole in the middle")
            .isEqualTo(UNKNOWN);
    }

    @Test
    void notAndOrAreTheThreeValuedOnes() {
        Condition both = new And(List.of(SUSPECTED, BROKEN));
        Condition either = new Or(List.of(SUSPECTED, BROKEN));
        assertThat(new Not(SUSPECTED).of(metal(2, 2))).isEqualTo(FALSE);
        assertThat(new Not(SUSPECTED).of(metal(0, 2))).isEqualTo(UNKNOWN);
        assertThat(both.of(facts(2, 2, 0, 2))).isEqualTo(UNKNOWN);
        assertThat(both.of(facts(0, 0, 0, 2))).isEqualTo(FALSE);
        assertThat(either.of(facts(2, 2, 0, 2))).isEqualTo(TRUE);
        assertThat(either.of(facts(0, 0, 0, 2))).isEqualTo(UNKNOWN);
        assertThat(either.of(facts(0, 0, 0, 0))).isEqualTo(FALSE);
    }

    @Test
    void aFalseAndIsDecidedByItsFalsePartsAndATrueOrByItsTrueOnes() {
        Condition both = new And(List.of(SUSPECTED, BROKEN));
        Condition either = new Or(List.of(SUSPECTED, BROKEN));
        assertThat(both.deciding(facts(0, 0, 2, 2))).containsExactly("metal");
        assertThat(both.deciding(facts(2, 2, 2, 2))).containsExactly("metal", "scalp-now");
        assertThat(both.deciding(facts(2, 2, 0, 2))).containsExactly("metal", "scalp-now");
        assertThat(either.deciding(facts(0, 0, 2, 2))).containsExactly("scalp-now");
        assertThat(either.deciding(facts(0, 0, 0, 0))).containsExactly("metal", "scalp-now");
        assertThat(new Not(SUSPECTED).deciding(metal(2, 2))).containsExactly("metal");
    }

    @Test
    void everyFactItReadsAndEveryComparisonIsListedInOrder() {
        Condition all = new And(List.of(new Not(SUSPECTED), new Or(List.of(BROKEN, SUSPECTED))));
        assertThat(all.reads()).containsExactly("metal", "scalp-now");
        assertThat(all.compares()).containsExactly((Compare) SUSPECTED, (Compare) BROKEN, (Compare) SUSPECTED);
        assertThat(all).hasToString("!(metal >= suspected) && (scalp_now == broken || metal >= suspected)");
        assertThat(new Or(List.of(new Not(BROKEN), SUSPECTED)).reads()).containsExactly("scalp-now", "metal");
    }
}
