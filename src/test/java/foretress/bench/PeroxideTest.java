package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PeroxideTest {
    /** Stoichiometry of 2 H2O2 → 2 H2O + O2 with 34.0147 g/mol and 22.414 l/mol; the trade's column is common practice. */
    @ParameterizedTest(name = "{0} % are {1} volumes to the trade, {2} by stoichiometry, {3} mol/l")
    @CsvSource({ "3, 10, 9.88, 0.882", "6, 20, 19.77, 1.764", "9, 30, 29.65, 2.646", "12, 40, 39.54, 3.528" })
    void strengthsOfTheShelf(double percent, double trade, double oxygen, double molar) {
        Peroxide peroxide = Peroxide.ofPercent(percent);
        assertThat(peroxide.volumes()).isCloseTo(trade, within(1e-9));
        assertThat(peroxide.oxygenVolumes()).isCloseTo(oxygen, within(0.05));
        assertThat(peroxide.molPerLitre()).isCloseTo(molar, within(0.002));
    }

    /** The same stoichiometry the other way round. */
    @ParameterizedTest(name = "{0} l of oxygen from a litre are {1} %")
    @CsvSource({ "10, 3.035, 0.005", "100, 30.35, 0.05" })
    void oxygenVolumesInPerCent(double volumes, double percent, double tolerance) {
        assertThat(Peroxide.ofOxygenVolumes(volumes).percent()).isCloseTo(percent, within(tolerance));
    }

    /** Worked example of a public chemistry page: 30 volumes are 2.677 mol/l, 9.1 %. */
    @Test
    void thirtyVolumesAsAChemistWorksThemOut() {
        assertThat(Peroxide.ofOxygenVolumes(30).molPerLitre()).isCloseTo(2.677, within(0.005));
        assertThat(Peroxide.ofOxygenVolumes(30).percent()).isCloseTo(9.1, within(0.05));
    }

    /** Regulation (EC) No 1223/2009, Annex III entry 12: at most 12 % in hair products. */
    @Test
    void twelvePerCentIsAllowedAndATenthMoreIsNot() {
        assertThat(Peroxide.ofPercent(12).withinEuHairLimit()).isTrue();
        assertThat(Peroxide.ofPercent(12.1).withinEuHairLimit()).isFalse();
    }

    /** The same entry: "12 % of H2O2 (40 volumes)". By stoichiometry it would be 12.14 %, a false alarm. */
    @Test
    void fortyVolumesAreTwelvePerCentAndAllowed() {
        assertThat(Peroxide.ofVolumes(40).percent()).isCloseTo(12, within(1e-9));
        assertThat(Peroxide.ofVolumes(40).withinEuHairLimit()).isTrue();
        assertThat(Peroxide.ofOxygenVolumes(40).percent()).isCloseTo(12.14, within(0.005));
    }

    /** r / (1 + r) of the developer; a handbook's range on the head for permanent colour is 3 to 8 %. */
    @ParameterizedTest(name = "{0} % at 1 : {1} is {2} % on the head")
    @CsvSource({ "6, 1, 3", "6, 1.5, 3.6", "6, 2, 4", "12, 2, 8", "9, 1, 4.5" })
    void strengthOnTheHead(double percent, double parts, double onTheHead) {
        assertThat(Peroxide.ofPercent(percent).onTheHead(parts)).isCloseTo(onTheHead, within(1e-9));
    }

    /** Molar masses 34.01 and 94.07 g/mol. */
    @Test
    void ureaPeroxideFreesAThirdOfItsMass() {
        assertThat(Peroxide.ofUreaPeroxide(100).percent()).isCloseTo(36.2, within(0.2));
    }

    @ParameterizedTest(name = "{0} %")
    @CsvSource({ "0", "0.09", "50.1", "-6", "NaN", "Infinity" })
    void strengthsThatNoBottleHoldsAreRefused(double percent) {
        assertThatThrownBy(() -> Peroxide.ofPercent(percent)).isInstanceOf(Impossible.class)
            .satisfies(e -> assertThat(((Impossible) e).reason()).isEqualTo(Impossible.Reason.STRENGTH_OUT_OF_RANGE));
    }

    @Test
    void aRefusedStrengthSaysWhatAndWhatNext() {
        assertThatThrownBy(() -> Peroxide.ofPercent(60))
            .hasMessage("A strength of 60 % is outside 0.1 to 50 %. Read the bottle again.");
    }

    @Property
    void everyWayOfWritingAStrengthLeadsBack(@ForAll @DoubleRange(min = 0.1, max = 50) double percent) {
        Peroxide peroxide = Peroxide.ofPercent(percent);
        assertThat(Peroxide.ofVolumes(Math.min(peroxide.volumes(), 50 * 10 / 3.0)).percent()).isCloseTo(percent,
            within(1e-9));
        assertThat(peroxide.oxygenVolumes()).isLessThan(peroxide.volumes()).isGreaterThan(peroxide.volumes() * 0.988);
    }

    @Property
    void strongerStaysStrongerOnTheHeadAndNothingGetsStronger(@ForAll @DoubleRange(min = 0.1, max = 25) double weak,
        @ForAll @DoubleRange(min = 0.1, max = 25) double more,
        @ForAll @DoubleRange(min = 0.1, max = 10) double parts) {
        double onTheHead = Peroxide.ofPercent(weak).onTheHead(parts);
        assertThat(onTheHead).isLessThan(weak).isLessThan(Peroxide.ofPercent(weak + more).onTheHead(parts));
    }
}
