package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrandMapTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final double MONTH = Growth.DAYS_A_MONTH;

    private static Treatment ago(double months, Zone zone) {
        LocalDate day = TODAY.minusDays((long) Math.floor(months * MONTH));
        return Treatment.once(Residue.METAL, day, day, zone, "Darkening lotion");
    }

    private static Lane lane(HairLength length, Treatment treatment, Cut... cuts) {
        return StrandMap.of(new HairHistory(length, List.of(treatment), List.of(cuts), Growth.PUBLISHED), TODAY).lanes()
            .get(0);
    }

    private static Lane lane(double cm, Treatment treatment) {
        return lane(HairLength.measured(cm), treatment);
    }

    @Test
    void aLotionOfTwoSummersAgoIsCutAwayAtEightCentimetres() {
        Lane lotion = lane(42,
            Treatment.once(Residue.METAL, LocalDate.of(2024, 6, 1), LocalDate.of(2024, 8, 31), Zone.WHOLE, "Lotion"));
        assertThat(lotion.cutToCm()).contains(8);
        assertThat(lotion.chanceLeft()).isGreaterThan(0.95);
        assertThat(lotion.metalSuspected()).isTrue();
    }

    @Test
    void cutToTheLengthItSaysAndNoneIsLeft() {
        Treatment lotion = ago(30, Zone.WHOLE);
        int cut = lane(42, lotion).cutToCm().orElseThrow();
        assertThat(lane(cut, lotion).chanceLeft()).isZero();
        assertThat(lane(cut, lotion).safetyChance()).isZero();
        assertThat(lane(cut, lotion).metalSuspected()).isFalse();
    }

    @Test
    void exactlyOnTheSafeEdgeNoneIsLeftAndAHairBeyondItSomeMayBe() {
        Treatment lotion = ago(24, Zone.WHOLE);
        double edge = lane(42, lotion).nearCm();
        assertThat(lane(edge, lotion).safetyChance()).isZero();
        assertThat(lane(edge + 0.01, lotion).safetyChance()).isEqualTo(1);
    }

    @Test
    void theDayItIsDoneAllOfItIsThere() {
        Lane lane = lane(20, ago(0, Zone.WHOLE));
        assertThat(lane.chanceLeft()).isEqualTo(1);
        assertThat(lane.hairsAt(0)).isEqualTo(10);
        assertThat(lane.hairsAt(20)).isEqualTo(10);
        assertThat(lane.cutToCm()).isEmpty();
    }

    @Test
    void metalIsSuspectedUntilStaffMeasuredAndTheClientIsSure() {
        Treatment longAgo = ago(240, Zone.WHOLE);
        assertThat(lane(HairLength.measured(30), longAgo).metalSuspected()).isFalse();
        assertThat(lane(HairLength.said(30), longAgo).metalSuspected()).isTrue();
        assertThat(lane(HairLength.measured(30), longAgo.unsure()).metalSuspected()).isTrue();
        assertThat(lane(HairLength.notKnown(), longAgo).metalSuspected()).isTrue();
    }

    @Test
    void hennaOfAKindNobodyKnowsMayBeMetalPlainHennaNot() {
        Treatment henna = Treatment.once(Residue.HENNA, TODAY.minusYears(1), TODAY.minusYears(1), Zone.WHOLE, "Henna");
        assertThat(lane(30, henna).metalSuspected()).isFalse();
        assertThat(lane(30, henna.maybeMetal()).metalSuspected()).isTrue();
    }

    @Test
    void anUnknownLengthIsDrawnAtAnAssumedOneAndCountsAsStillThere() {
        StrandMap map = StrandMap.of(HairHistory.of(HairLength.notKnown(), List.of(ago(240, Zone.WHOLE))), TODAY);
        assertThat(map.lengthKnown()).isFalse();
        assertThat(map.lengthCm()).isEqualTo(120);
        assertThat(map.lanes().get(0).safetyChance()).isEqualTo(1);
        assertThat(map.lanes().get(0).chanceLeft()).isEqualTo(1);
    }

    @Test
    void grownOutAfterTheLengthAtTheSlowRateAndFourMonths() {
        Treatment dye =
            Treatment.once(Residue.OXIDATIVE, LocalDate.of(2025, 2, 28), LocalDate.of(2025, 2, 28), Zone.WHOLE, "Dye");
        assertThat(lane(42, dye).grownOut()).isEqualTo(YearMonth.of(2032, 6));
    }

    @Test
    void aKnownCutBehindTheEdgeTookItAll() {
        Treatment lotion = ago(60, Zone.WHOLE);
        LocalDate later = TODAY.minusDays((long) (24 * MONTH));
        assertThat(lane(HairLength.measured(40), lotion).safetyChance()).isEqualTo(1);
        assertThat(lane(HairLength.measured(40), lotion, new Cut(later, 15)).safetyChance()).isZero();
        assertThat(lane(HairLength.measured(40), lotion, new Cut(later, 15)).chanceLeft()).isZero();
        assertThat(lane(HairLength.measured(40), lotion, new Cut(later, 17)).safetyChance()).isEqualTo(1);
    }

    @Test
    void aCutOnTheDayOrBeforeItRemovesNothing() {
        Treatment lotion = ago(10, Zone.WHOLE);
        assertThat(lane(HairLength.measured(40), lotion, new Cut(lotion.latest(), 0)).safetyChance()).isEqualTo(1);
    }

    @Test
    void newGrowthIsABandThatEndsAndRepeatedNewGrowthGoesToTheTip() {
        Lane once = lane(40, ago(6, Zone.REGROWTH));
        assertThat(once.chanceAt(40)).isZero();
        assertThat(once.farCm()).isCloseTo(1.4 * 9, within(0.1));
        assertThat(lane(40, ago(6, Zone.REGROWTH).againAndAgain()).chanceAt(40)).isCloseTo(1, within(1e-12));
    }

    @Test
    void newGrowthReachesBackToTheTreatmentBefore() {
        Treatment before = ago(26, Zone.WHOLE);
        StrandMap map =
            StrandMap.of(HairHistory.of(HairLength.measured(60), List.of(before, ago(6, Zone.REGROWTH))), TODAY);
        assertThat(map.lanes().get(1).farCm()).isCloseTo(1.4 * 26, within(0.1));
    }

    @Test
    void theEndsMayHaveBeenCutSinceTheWholeMayNot() {
        Lane ends = lane(40, ago(6, Zone.ENDS));
        Lane whole = lane(40, ago(6, Zone.WHOLE));
        assertThat(ends.chanceAt(20)).isLessThan(whole.chanceAt(20));
        assertThat(ends.safetyChance()).isEqualTo(whole.safetyChance());
        assertThat(ends.nearCm()).isEqualTo(whole.nearCm());
    }

    @Test
    void longerAgoNeverLeavesMore() {
        for (Zone zone : Zone.values()) {
            for (double months = 0; months < 90; months += 1.5) {
                assertThat(lane(40, ago(months + 1.5, zone)).chanceLeft())
                    .isLessThanOrEqualTo(lane(40, ago(months, zone)).chanceLeft());
                assertThat(lane(40, ago(months + 1.5, zone)).safetyChance())
                    .isLessThanOrEqualTo(lane(40, ago(months, zone)).safetyChance());
                assertThat(lane(40, ago(months + 1.5, zone)).nearCm())
                    .isGreaterThanOrEqualTo(lane(40, ago(months, zone)).nearCm());
            }
        }
    }

    @Test
    void longerHairNeverHoldsLess() {
        for (double cm = 1; cm < 90; cm += 1.7) {
            assertThat(lane(cm + 1.7, ago(36, Zone.WHOLE)).chanceLeft())
                .isGreaterThanOrEqualTo(lane(cm, ago(36, Zone.WHOLE)).chanceLeft());
        }
    }

    @Test
    void aWiderSpanThatEndsOnTheSameDayNeverLoweredTheSafeFigureBelowTheChance() {
        for (int days = 0; days < 4000; days += 131) {
            LocalDate last = TODAY.minusMonths(58);
            Lane lane = lane(30, Treatment.once(Residue.METAL, last.minusDays(days), last, Zone.WHOLE, "Lotion"));
            assertThat(lane.safetyChance()).isGreaterThanOrEqualTo(lane.chanceLeft());
        }
    }

    @Test
    void anOpenPastDoesNotThinOutItsNearEnd() {
        Treatment openPast =
            Treatment.once(Residue.METAL, TODAY.minusYears(35), TODAY.minusYears(3), Zone.WHOLE, "Lotion");
        assertThat(lane(40, openPast).safetyChance()).isEqualTo(1);
        assertThat(lane(40, openPast).chanceLeft()).isGreaterThan(0.2);
    }

    @Test
    void towardsTheTipMoreHairsCarryAWholeTreatment() {
        Lane lane = lane(60, ago(30, Zone.WHOLE));
        for (int cm = 0; cm < 60; cm++) {
            assertThat(lane.hairsAt(cm + 1)).isGreaterThanOrEqualTo(lane.hairsAt(cm));
        }
        assertThat(lane.hairsAt(lane.nearCm() - 0.5)).isZero();
        assertThat(lane.hairsAt(lane.nearCm() + 0.1)).isEqualTo(1);
    }

    @Test
    void aDayAfterTodayCountsAsToday() {
        Treatment tomorrow = Treatment.once(Residue.OXIDATIVE, TODAY.plusDays(1), TODAY.plusDays(9), Zone.WHOLE, "Dye");
        assertThat(lane(20, tomorrow).chanceLeft()).isEqualTo(1);
        assertThat(lane(20, tomorrow).safetyChance()).isEqualTo(1);
    }

    @Test
    void theMapNamesOneCutThatFreesItOfMetal() {
        Treatment old = ago(40, Zone.WHOLE);
        Treatment recent = ago(20, Zone.WHOLE);
        HairHistory both = HairHistory.of(HairLength.measured(50), List.of(old, recent));
        assertThat(StrandMap.of(both, TODAY).metalFreeCutCm()).isEqualTo(Optional.of(7));
        HairHistory today = HairHistory.of(HairLength.measured(50), List.of(old, ago(1, Zone.WHOLE)));
        assertThat(StrandMap.of(today, TODAY).metalFreeCutCm()).isEmpty();
    }

    @Test
    void refusesALengthThatIsNone() {
        assertThatThrownBy(() -> HairLength.measured(0)).hasMessageContaining("not a length of hair");
        assertThatThrownBy(() -> HairLength.measured(Double.NaN)).hasMessageContaining("not a length of hair");
        assertThatThrownBy(() -> HairLength.measured(301)).hasMessageContaining("not a length of hair");
    }

    @Test
    void hairOfThreeMetresIsTheLongestAndAnythingOfItIsHair() {
        assertThat(HairLength.measured(300).cm()).hasValue(300);
        assertThatThrownBy(() -> HairLength.measured(300.1)).isInstanceOf(IllegalArgumentException.class);
        assertThat(HairLength.measured(0.1).measured()).isTrue();
        assertThat(new Range(0, 0).toCm()).isZero();
        assertThat(new Cut(TODAY, 0).toCm()).isZero();
    }

    /** Half a centimetre a month after four of rest: one whole centimetre is free of it half a year later, and not before. */
    @Test
    void theShortestCutIsOneCentimetreAndWhereTheHairEndsNoneIsNamed() {
        assertThat(lane(42, ago(5.9, Zone.WHOLE)).cutToCm()).isEmpty();
        assertThat(lane(42, ago(6.2, Zone.WHOLE)).cutToCm()).contains(1);
        Treatment old = ago(24, Zone.WHOLE);
        double edge = lane(42, old).nearCm();
        assertThat(lane(edge, old).cutToCm()).isEmpty();
        assertThat(lane(edge + 0.01, old).cutToCm()).contains(9);
    }

    @Test
    void theMeasuredCutIsNamedOnlyWhereItSaysMoreAndLiesOnTheHair() {
        Treatment old = ago(24, Zone.WHOLE);
        var quick = new Growth(0.9, 1.2);
        double near = 0.9 * (Growth.monthsBetween(old.latest(), TODAY) - 4);
        assertThat(measured(42, old, quick).measuredCutToCm()).contains((int) Math.floor(near));
        assertThat(measured(near, old, quick).measuredCutToCm()).isEmpty();
        assertThat(measured(near + 0.01, old, quick).measuredCutToCm()).contains((int) Math.floor(near));
        assertThat(measured(42, ago(25, Zone.WHOLE), new Growth(0.505, 1.2)).measuredCutToCm())
            .as("the same centimetre").isEmpty();
    }

    private static Lane measured(double cm, Treatment treatment, Growth growth) {
        return StrandMap
            .of(new HairHistory(HairLength.measured(cm), List.of(treatment), List.of(), growth), TODAY).lanes().get(0);
    }

    @Test
    void aCutExactlyAtTheSafeEdgeTookItAllAndOneOfTomorrowNothing() {
        Treatment lotion = ago(24, Zone.WHOLE);
        LocalDate day = TODAY.minusDays(100);
        double edge = Growth.safeNearEdge(Growth.monthsBetween(lotion.latest(), day));
        assertThat(lane(HairLength.measured(42), lotion, new Cut(day, edge)).safetyChance()).isZero();
        assertThat(lane(HairLength.measured(42), lotion, new Cut(day, edge + 0.01)).safetyChance()).isEqualTo(1);
        Lane tomorrow = lane(HairLength.measured(42), lotion, new Cut(TODAY.plusDays(1), 1));
        assertThat(tomorrow.safetyChance()).isEqualTo(1);
        assertThat(tomorrow.chanceAt(30)).isEqualTo(lane(42, lotion).chanceAt(30));
        Lane today = lane(HairLength.measured(42), lotion, new Cut(TODAY, 1));
        assertThat(today.safetyChance()).isZero();
        assertThat(today.chanceAt(30)).isLessThan(lane(42, lotion).chanceAt(30));
        Lane sameDay = lane(HairLength.measured(42), lotion, new Cut(lotion.earliest(), 1));
        assertThat(sameDay.chanceAt(30)).isEqualTo(lane(42, lotion).chanceAt(30));
    }

    @Test
    void aMapIsSuspectOfMetalWhereOneLaneIs() {
        Treatment clean =
            Treatment.once(Residue.OXIDATIVE, TODAY.minusDays(90), TODAY.minusDays(90), Zone.WHOLE, "Dye");
        HairLength length = HairLength.measured(42);
        assertThat(StrandMap.of(HairHistory.of(length, List.of(clean)), TODAY).metalSuspected()).isFalse();
        assertThat(StrandMap.of(HairHistory.of(length, List.of(clean, ago(24, Zone.WHOLE))), TODAY).metalSuspected())
            .isTrue();
    }

    /** One hair in ten is the least a picture shows: what may be there is never drawn as nothing. */
    @Test
    void oneHairIsShownWhereverAnyMayCarryItAndNoneWhereNoneCan() {
        Lane band = lane(60, ago(24, Zone.REGROWTH));
        assertThat(band.chanceAt(band.nearCm())).isLessThan(1e-6);
        assertThat(band.hairsAt(band.nearCm())).isEqualTo(1);
        assertThat(band.hairsAt(band.nearCm() - 0.3)).isZero();
        assertThat(band.farCm()).isLessThan(60);
        assertThat(band.hairsAt(band.farCm())).isEqualTo(1);
        assertThat(band.hairsAt(band.farCm() + 0.3)).isZero();
        Lane whole = lane(42, ago(3, Zone.WHOLE));
        assertThat(whole.hairsAt(42)).isEqualTo(10);
        assertThat(whole.hairsAt(42.01)).isZero();
        assertThat(whole.hairsAt(-0.01)).isZero();
    }

    @Test
    void betweenTwoPlacesTheChanceIsReadOnTheStraightLine() {
        Lane lane = lane(42.1, ago(14, Zone.WHOLE));
        double at10 = lane.chanceAt(10);
        double on = lane.chanceAt(10.25);
        assertThat(on - at10).isGreaterThan(0.001);
        assertThat(lane.chanceAt(10.125)).isCloseTo((at10 + on) / 2, within(1e-9));
        assertThat(lane.chanceAt(10.0625)).isCloseTo(at10 + (on - at10) / 4, within(1e-9));
        assertThat(lane.chanceAt(42.1)).isEqualTo(1);
        assertThat(lane.chanceAt(42.11)).isZero();
        assertThat(lane.chanceAt(-0.01)).isZero();
    }

    @Test
    void whatHasGrownOutBeginsNowhereAndWhatGoesToTheTipEndsThere() {
        Lane gone = lane(10, ago(120, Zone.WHOLE));
        assertThat(gone.starts()).isEmpty();
        assertThat(gone.reaches()).isEmpty();
        assertThat(lane(42, ago(24, Zone.WHOLE)).reaches()).contains(new Range(42, 42));
        Lane band = lane(80, ago(24, Zone.REGROWTH));
        assertThat(band.reaches().orElseThrow().fromCm()).isGreaterThan(band.starts().orElseThrow().fromCm());
        assertThat(band.reaches().orElseThrow().toCm()).isGreaterThan(band.starts().orElseThrow().toCm());
    }

    @Test
    void aTreatmentKeepsTheWordsBesideItsBand() {
        Treatment told = ago(24, Zone.WHOLE).labelled("Restorer", "summer 2024");
        assertThat(told.label()).isEqualTo("Restorer");
        assertThat(told.said()).isEqualTo("summer 2024");
        assertThat(told.said("spring 2024")).isEqualTo(
            new Treatment(told.id(), Residue.METAL, told.earliest(), told.latest(), Zone.WHOLE, false, true, true,
                "Restorer", "spring 2024"));
    }

    private static void isDrawnAs(Treatment one, Treatment other) {
        for (double cm = 0; cm <= 45; cm++) {
            assertThat(lane(45, one).chanceAt(cm)).as("at %s cm", cm).isEqualTo(lane(45, other).chanceAt(cm));
        }
    }

    @Test
    @DisplayName("Centimetres a client remembers narrow the picture and never the safe side; of metal not even that")
    void centimetresNarrowThePictureOnly() {
        for (Zone zone : new Zone[] { Zone.REGROWTH, Zone.ENDS }) {
            Treatment dye =
                Treatment.once(Residue.OXIDATIVE, TODAY.minusMonths(14), TODAY.minusMonths(12), zone, "Dye");
            Treatment some = dye.reaching(new Range(1.5, 2.5));
            assertThat(lane(45, some).safetyChance()).isEqualTo(lane(45, dye).safetyChance());
            assertThat(lane(45, some).nearCm()).isEqualTo(lane(45, dye).nearCm());
            assertThat(lane(45, some).cutToCm()).isEqualTo(lane(45, dye).cutToCm());
            assertThat(lane(45, some).chanceAt(30)).isLessThan(0.2);
            isDrawnAs(some.maybeMetal(), dye);
            isDrawnAs(dye.againAndAgain(), zone == Zone.REGROWTH ? some.againAndAgain() : dye.againAndAgain());
        }
    }

    /**
     * With a known cut the figures are sums, without one closed forms: a cut longer than any hair takes nothing, so both must say the
     * same, but for the sum's steps.
     */
    @ParameterizedTest(name = "{0}, {1} to {2} months ago, {3} cm")
    @CsvSource({ "WHOLE, 14, 14, 42", "WHOLE, 50, 30, 42", "WHOLE, 44, 40, 30", "LENGTHS_ENDS, 30, 20, 42",
        "ENDS, 30, 20, 42", "REGROWTH, 24, 24, 60", "REGROWTH, 30, 18, 60", "WHOLE, 2, 0, 42" })
    void aCutThatTookNothingChangesNoFigure(Zone zone, int earliest, int latest, double cm) {
        Treatment dye = Treatment.once(Residue.OXIDATIVE, TODAY.minusDays((long) (earliest * MONTH)),
            TODAY.minusDays((long) (latest * MONTH)), zone, "Dye");
        Lane uncut = lane(cm, dye);
        Lane cut = lane(HairLength.measured(cm), dye, new Cut(TODAY, 299));
        assertThat(cut.chanceLeft()).isCloseTo(uncut.chanceLeft(), within(0.02));
        for (double at = 0; at <= cm; at += 1.5) {
            assertThat(cut.chanceAt(at)).as("at %s cm", at).isCloseTo(uncut.chanceAt(at), within(0.03));
        }
        near(cut.starts().orElseThrow(), uncut.starts().orElseThrow());
        near(cut.reaches().orElseThrow(), uncut.reaches().orElseThrow());
    }

    private static void near(Range one, Range other) {
        assertThat(one.fromCm()).isCloseTo(other.fromCm(), within(0.5));
        assertThat(one.toCm()).isCloseTo(other.toCm(), within(0.5));
    }

    /** Of a lotion that can only lie beyond the tip, but of which nobody is sure, no cut would free the hair: it asks for none. */
    @Test
    void whatCanOnlyLieBeyondTheTipDoesNotStandInTheWayOfACut() {
        Treatment beyond = ago(100, Zone.WHOLE).unsure();
        StrandMap map = StrandMap.of(HairHistory.of(HairLength.said(42), List.of(beyond, ago(24, Zone.WHOLE))), TODAY);
        assertThat(map.lanes()).allMatch(Lane::metalSuspected);
        assertThat(map.metalFreeCutCm()).contains(9);
    }
}
