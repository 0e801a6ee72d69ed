package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.hair.HairHistory;
import foretress.hair.HairLength;
import foretress.hair.Residue;
import foretress.hair.StrandMap;
import foretress.hair.Treatment;
import foretress.hair.Zone;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchCutsTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    private static List<BenchCut> cuts(double cm, Treatment... treatments) {
        return BenchCuts.of(StrandMap.of(HairHistory.of(HairLength.measured(cm), List.of(treatments)), TODAY));
    }

    private static Treatment ago(Residue residue, int months, String name) {
        LocalDate day = TODAY.minusMonths(months);
        return Treatment.once(residue, day, day, Zone.WHOLE, name);
    }

    private static BenchCut of(List<BenchCut> cuts, Tuft.Kind kind) {
        return cuts.stream().filter(c -> c.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void aSuspectStretchTheEndsAndTheNewGrowth() {
        List<BenchCut> cuts = cuts(40, ago(Residue.METAL, 24, "Lotion"));
        assertThat(cuts).extracting(BenchCut::letter).containsExactly("A", "B", "C");
        assertThat(cuts).extracting(BenchCut::kind).containsExactly(Tuft.Kind.SUSPECT, Tuft.Kind.OLDEST_ENDS,
            Tuft.Kind.CONTROL);
        assertThat(of(cuts, Tuft.Kind.SUSPECT).stretch()).isEqualTo("Lotion");
        assertThat(of(cuts, Tuft.Kind.OLDEST_ENDS)).extracting(BenchCut::fromCm, BenchCut::toCm).containsExactly(34.0,
            40.0);
        assertThat(of(cuts, Tuft.Kind.CONTROL)).extracting(BenchCut::fromCm, BenchCut::toCm).containsExactly(0.0, 2.0);
    }

    @Test
    void everySuspectStretchLiesOnTheHairAndBeyondItsNearestPlace() {
        for (int months = 0; months < 70; months += 3) {
            BenchCut cut = cuts(40, ago(Residue.METAL, months, "Lotion")).get(0);
            assertThat(cut.toCm()).as("%d months", months).isGreaterThan(cut.fromCm()).isLessThanOrEqualTo(40.5);
            assertThat(cut.fromCm()).isGreaterThanOrEqualTo(0);
        }
    }

    /** New growth is counted on the slowest rate with four months of rest: a colour of last month leaves none that is certain. */
    @Test
    void withoutCertainNewGrowthThereIsNoControlToProposeUnasked() {
        List<BenchCut> cuts = cuts(40, ago(Residue.METAL, 24, "Lotion"), ago(Residue.OXIDATIVE, 1, "Box dye"));
        assertThat(of(cuts, Tuft.Kind.CONTROL).possible()).isFalse();
    }

    @Test
    void whatNobodyCanNameIsSuspectToo() {
        assertThat(of(cuts(30, ago(Residue.UNKNOWN, 12, "Something")), Tuft.Kind.SUSPECT).stretch())
            .isEqualTo("Something");
    }

    @Test
    void aKnownColourIsNotSuspectOfMetal() {
        assertThat(cuts(30, ago(Residue.OXIDATIVE, 12, "Box dye"))).extracting(BenchCut::kind)
            .doesNotContain(Tuft.Kind.SUSPECT);
    }

    @Test
    void twoLotionsAtOnePlaceShareATuftAndBothAreNamed() {
        List<BenchCut> cuts = cuts(40, ago(Residue.METAL, 24, "First"), ago(Residue.METAL, 25, "Second"));
        assertThat(cuts.get(0).stretch()).contains("First").contains("Second");
        assertThat(cuts).hasSize(3);
    }

    @Test
    @DisplayName("R45: no two suspect tufts would be half of the same hair, and a shared one reaches over both stretches")
    void suspectTuftsAreNotCutFromNearlyTheSameHair() {
        for (int apart = 1; apart < 24; apart++) {
            List<BenchCut> cuts = cuts(60, ago(Residue.METAL, 20, "First"), ago(Residue.METAL, 20 + apart, "Second"));
            List<BenchCut> suspect = cuts.stream().filter(c -> c.kind() == Tuft.Kind.SUSPECT).toList();
            for (int i = 1; i < suspect.size(); i++) {
                assertThat(suspect.get(i).fromCm() - suspect.get(i - 1).fromCm()).as("%d months apart", apart)
                    .isGreaterThanOrEqualTo(BenchCuts.TUFT_CM / 2);
            }
            if (suspect.size() == 1) {
                assertThat(suspect.get(0).toCm()).as("%d months apart", apart)
                    .isGreaterThanOrEqualTo(cuts(60, ago(Residue.METAL, 20 + apart, "Second")).get(0).toCm());
            }
        }
    }

    @Test
    void shortHairStillHasEndsAndNothingLiesBeyondIt() {
        for (double cm : new double[] { 1, 2, 3, 5 }) {
            assertThat(cuts(cm, ago(Residue.METAL, 2, "Lotion"))).as("%s cm", cm)
                .allSatisfy(c -> assertThat(c.toCm()).isGreaterThan(c.fromCm()))
                .filteredOn(c -> c.kind() == Tuft.Kind.OLDEST_ENDS).allSatisfy(c -> assertThat(c.toCm()).isEqualTo(cm));
        }
    }

    @Test
    void noTwoTuftsHaveOneLetter() {
        Treatment[] many = IntStream.range(0, 60).mapToObj(i -> ago(Residue.METAL, 4 + 3 * i, "Lotion " + i))
            .toArray(Treatment[]::new);
        assertThat(cuts(120, many)).extracting(BenchCut::letter).doesNotHaveDuplicates();
    }

    /** Where nearly as much of it is to be found as at the likeliest place, nearest to the head; worked out on the growth of single hairs. */
    @ParameterizedTest
    @CsvSource({ "2, 2.5", "6, 7.5", "12, 15", "18, 22.5", "24, 30", "30, 33", "48, 34", "60, 34" })
    void aTuftIsCutWhereItIsNearlyLikeliest(int months, double from) {
        assertThat(cuts(40, ago(Residue.METAL, months, "Lotion")).get(0))
            .isEqualTo(new BenchCut("A", Tuft.Kind.SUSPECT, "Lotion", from, from + 6, true));
    }

    @Test
    void twoLotionsFarApartHaveATuftEach() {
        assertThat(cuts(60, ago(Residue.METAL, 20, "First"), ago(Residue.METAL, 40, "Second"))).startsWith(
            new BenchCut("A", Tuft.Kind.SUSPECT, "First", 25, 31, true),
            new BenchCut("B", Tuft.Kind.SUSPECT, "Second", 50, 56, true));
    }

    @Test
    void theControlNeverReachesFurtherThanTheNewGrowthThatIsCertain() {
        for (int months = 5; months < 12; months++) {
            Treatment dye = ago(Residue.OXIDATIVE, months, "Box dye");
            double free =
                StrandMap.of(HairHistory.of(HairLength.measured(40), List.of(dye)), TODAY).lanes().get(0).nearCm();
            BenchCut control = of(cuts(40, dye), Tuft.Kind.CONTROL);
            assertThat(control.possible()).as("%d months, %s cm", months, free).isEqualTo(free >= 0.5);
            if (control.possible()) {
                assertThat(control.toCm()).as("%d months", months).isLessThanOrEqualTo(Math.min(free, 2))
                    .isGreaterThan(Math.min(free, 2) - 0.5);
            }
        }
    }

    @Test
    void hairShorterThanTheControlHasNone() {
        assertThat(of(cuts(2), Tuft.Kind.CONTROL).possible()).isTrue();
        assertThat(of(cuts(1.9), Tuft.Kind.CONTROL).possible()).isFalse();
    }

    @Test
    void whatHasGrownOutIsNeitherSuspectNorInTheControlsWay() {
        assertThat(cuts(40, ago(Residue.METAL, 110, "Lotion"))).extracting(BenchCut::kind)
            .containsExactly(Tuft.Kind.OLDEST_ENDS, Tuft.Kind.CONTROL);
        List<BenchCut> cuts = cuts(4, ago(Residue.OXIDATIVE, 110, "Box dye"));
        assertThat(of(cuts, Tuft.Kind.CONTROL).toCm()).isEqualTo(2);
    }

    @Test
    void whatNobodyCanNameIsNoLongerSuspectOnceItHasGrownOut() {
        assertThat(cuts(40, ago(Residue.UNKNOWN, 110, "Something"))).extracting(BenchCut::kind)
            .containsExactly(Tuft.Kind.OLDEST_ENDS, Tuft.Kind.CONTROL);
    }

    /** A dye of seven months ago may begin at 1.5 cm; but all hair was cut to 1 cm a month ago, where it could have got to by then. */
    @Test
    void whatWasCutOffIsNotInTheControlsWay() {
        Treatment dye = ago(Residue.OXIDATIVE, 7, "Box dye");
        var history = new HairHistory(HairLength.measured(4), List.of(dye),
            List.of(new Cut(TODAY.minusMonths(1), 0.9)), Growth.PUBLISHED);
        assertThat(of(BenchCuts.of(StrandMap.of(history, TODAY)), Tuft.Kind.CONTROL).toCm()).isEqualTo(2);
        assertThat(of(cuts(4, dye), Tuft.Kind.CONTROL).toCm()).isEqualTo(1);
    }

    /** On 40 cm of hair the last half centimetre may still carry it: the tuft is cut from there, and not from beyond the tip. */
    @Test
    void atTheVeryTipTheTuftStillLiesOnTheHair() {
        LocalDate day = TODAY.minusDays(2550);
        List<BenchCut> cuts = cuts(40, Treatment.once(Residue.METAL, day, day, Zone.WHOLE, "Lotion"));
        assertThat(cuts.get(0)).isEqualTo(new BenchCut("A", Tuft.Kind.SUSPECT, "Lotion", 39.5, 40, true));
    }

    @Test
    void whatCanHoldNoMetalIsSuspectOnlyWhereNothingElseIs() {
        Treatment one = ago(Residue.UNKNOWN, 12, "Something");
        var clean = new Treatment(one.id(), one.residue(), one.earliest(), one.latest(), one.zone(), one.repeated(),
            one.sure(), false, one.label(), one.said());
        assertThat(cuts(40, clean).get(0).kind()).isEqualTo(Tuft.Kind.SUSPECT);
        assertThat(cuts(40, clean, ago(Residue.METAL, 24, "Lotion"))).filteredOn(c -> c.kind() == Tuft.Kind.SUSPECT)
            .extracting(BenchCut::stretch).containsExactly("Lotion");
    }

    @Test
    void afterZComesASecondA() {
        Treatment[] many = IntStream.range(0, 60).mapToObj(i -> ago(Residue.METAL, 4 + 3 * i, "Lotion " + i))
            .toArray(Treatment[]::new);
        assertThat(cuts(200, many)).extracting(BenchCut::letter).contains("A", "Z", "A2", "B2")
            .doesNotContain("A1", "A26").doesNotHaveDuplicates();
    }

    @Test
    void aTestFromBeforeCentimetresWereAskedStillKnowsTheTreatment() {
        var dye = new SaidTreatment("box-dye", new SaidDate.InYear(Year.of(2025)), "ends", "home", "once");
        assertThat(BenchFacts.told(dye.reaching("10-cm"))).isEqualTo(BenchFacts.told(dye))
            .isEqualTo("SaidTreatment[what=box-dye, when=InYear[year=2025], zone=ends, by=home, often=once, "
                + "every=dont-know, since=NotKnown[]]");
    }
}
