package foretress.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.assessment.Chemistry.SkinTest;
import foretress.hair.Residue;
import foretress.questionnaire.SaidDate.Hemisphere;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What holds where the salon is, and the lists that rules are read with")
class PolicyTest {
    private static final Policy POLICY = new Policy("nowhere",
        Map.of("minimum-age", 18, "label-age", 16, "skin-test-wait-hours", 48, "skin-test-validity-months", 6,
            "incompatibility-test-hours", 24, "retention-years", 7, "minor-retention-age", 25),
        Map.of("label-age", "a-source"), "000", "A4", Hemisphere.NORTH,
        List.of(new Policy.Warning("dye", Set.of("oxidative-dye", "direct-dye"), "s"),
            new Policy.Warning("lye", Set.of("hydroxide"), "s")));
    private static final Chemistries ALL = new Chemistries(List.of(new Chemistry("water", SkinTest.NO, true, false),
        new Chemistry("dye", SkinTest.YES, false, true), new Chemistry("tint", SkinTest.OR_LETTER, false, false)));

    @Test
    void everyFigureIsTheOneOfItsName() {
        assertThat(List.of(POLICY.minimumAge(), POLICY.labelAge(), POLICY.skinTestWaitHours(),
            POLICY.skinTestValidityMonths(), POLICY.incompatibilityTestHours(), POLICY.retentionYears(),
            POLICY.minorRetentionAge())).containsExactly(18, 16, 48, 6, 24, 7, 25);
        assertThat(POLICY.source("label-age")).isEqualTo("a-source");
        assertThat(POLICY.with("label-age", 18).labelAge()).isEqualTo(18);
        assertThat(POLICY.with("label-age", 18).minimumAge()).as("the others stay").isEqualTo(18);
        assertThatThrownBy(() -> POLICY.figure("none")).hasMessageContaining("nowhere").hasMessageContaining("none");
        assertThatThrownBy(() -> POLICY.source("none")).hasMessageContaining("nowhere").hasMessageContaining("none");
    }

    @Test
    void whoeverWasBornOnALeapDayIsOldEnoughOnTheFirstOfMarchOfACommonYear() {
        assertThat(POLICY.oldEnough(LocalDate.of(2012, 2, 28))).isEqualTo(LocalDate.of(2028, 2, 28));
        assertThat(POLICY.oldEnough(LocalDate.of(2012, 2, 29))).isEqualTo(LocalDate.of(2028, 2, 29));
        assertThat(POLICY.with("label-age", 17).oldEnough(LocalDate.of(2012, 2, 29)))
            .isEqualTo(LocalDate.of(2029, 3, 1));
        assertThat(POLICY.with("label-age", 17).oldEnough(LocalDate.of(2012, 2, 28)))
            .isEqualTo(LocalDate.of(2029, 2, 28));
    }

    @Test
    void theLabelsWarningsAreThoseOfWhatIsPutOn() {
        assertThat(POLICY.warningsOn(Set.of("direct-dye", "peroxide"))).containsExactly("dye");
        assertThat(POLICY.warningsOn(Set.of("oxidative-dye", "hydroxide"))).containsExactly("dye", "lye");
        assertThat(POLICY.warningsOn(Set.of("peroxide"))).isEmpty();
    }

    @Test
    void aChemistrySaysWhetherATestOpensItOrALetterDoes() {
        assertThat(ALL.needSkinTest(List.of("water"))).isFalse();
        assertThat(ALL.needSkinTest(List.of("water", "dye"))).isTrue();
        assertThat(ALL.needSkinTest(List.of("tint"))).isTrue();
        assertThat(ALL.needingSkinTest()).containsExactly("dye");
        assertThat(ALL.openedByLetter("tint")).isTrue();
        assertThat(ALL.openedByLetter("dye")).isFalse();
        assertThat(ALL.ofProductLines()).containsExactly("dye");
        assertThat(ALL.dry(List.of("water"))).isTrue();
        assertThat(ALL.dry(List.of("water", "dye"))).isFalse();
    }

    @Test
    void whatNobodyKnowsMayHaveLeftAnythingAndMayHoldMetal() {
        var known = new KnownTreatments(List.of(new TreatmentKind("rinse", Residue.OXIDATIVE, false)), List.of());
        assertThat(known.leaves("rinse")).isEqualTo(Residue.OXIDATIVE);
        assertThat(known.mayHoldMetal("rinse")).isFalse();
        assertThat(known.leaves("lotion")).isEqualTo(Residue.UNKNOWN);
        assertThat(known.mayHoldMetal("lotion")).isTrue();
        assertThat(known.kind("rinse")).isPresent();
        assertThat(known.kind("lotion")).isEmpty();
    }

    @Test
    void aTestStandsForSomeDaysOrMonthsOrForOneApplication() {
        LocalDate day = LocalDate.of(2026, 1, 31);
        assertThat(new Validity.Months(1).lastDay(day)).contains(LocalDate.of(2026, 2, 28));
        assertThat(new Validity.Days(1).lastDay(day)).contains(LocalDate.of(2026, 2, 1));
        assertThat(new Validity.Unsaid().lastDay(day)).isEmpty();
        assertThat(new Validity.EachApplication().lastDay(day)).isEmpty();
        assertThat(Validity.ofPolicy(0)).isEqualTo(new Validity.EachApplication());
        assertThat(Validity.ofPolicy(1)).isEqualTo(new Validity.Months(1));
        assertThatThrownBy(() -> new Validity.Days(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Validity.Months(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void weightsAreComparedByTheirOrderAndReadBackFromTheirCodes() {
        assertThat(Weight.NOTE.atLeast(Weight.NOTE)).isTrue();
        assertThat(Weight.NOTE.atLeast(Weight.RESTRICTS)).isFalse();
        assertThat(Weight.NOTE.heavier(Weight.PREVENTS)).isEqualTo(Weight.PREVENTS);
        assertThat(Weight.PREVENTS.heavier(Weight.NOTE)).isEqualTo(Weight.PREVENTS);
        assertThat(Weight.NOTE.lighter(Weight.PREVENTS)).isEqualTo(Weight.NOTE);
        assertThat(Weight.PREVENTS.lighter(Weight.NOTE)).isEqualTo(Weight.NOTE);
        assertThat(Weight.heaviest(List.of())).isEqualTo(Weight.NOTHING_FOUND);
        assertThat(Arrays.stream(Weight.values()).map(weight -> Weight.ofCode(weight.code())))
            .containsExactly(Weight.values());
        assertThatThrownBy(() -> Weight.ofCode("heavy")).isInstanceOf(IllegalArgumentException.class);
    }
}
