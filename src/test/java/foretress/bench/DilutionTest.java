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

class DilutionTest {
    /** C1 V1 = C2 V2, worked by hand. */
    @ParameterizedTest(name = "{2} ml of {1} % from {0} %: {3} ml and {4} ml of water")
    @CsvSource({ "12, 6, 100, 50, 50", "12, 9, 80, 60, 20", "9, 3, 120, 40, 80", "6, 6, 40, 40, 0" })
    void whatTheBottleAndTheTapGive(double stock, double wanted, double ml, double stockMl, double waterMl) {
        Dilution dilution = Dilution.of(Peroxide.ofPercent(stock), Peroxide.ofPercent(wanted), ml);
        assertThat(dilution.stockMl()).isCloseTo(stockMl, within(1e-9));
        assertThat(dilution.waterMl()).isCloseTo(waterMl, within(1e-9));
    }

    /** C1 V1 = C2 V2 in the trade's volumes. */
    @Test
    void sixtyMillilitresOfTwentyVolumesFromForty() {
        Dilution dilution = Dilution.of(Peroxide.ofVolumes(40), Peroxide.ofVolumes(20), 60);
        assertThat(dilution.stockMl()).isCloseTo(30, within(1e-9));
        assertThat(dilution.waterMl()).isCloseTo(30, within(1e-9));
    }

    /** Water only weakens: 9 % is not to be had from 6 %. */
    @Test
    void strongerThanTheBottleIsRefusedWithBothStrengths() {
        assertThatThrownBy(() -> Dilution.of(Peroxide.ofPercent(6), Peroxide.ofPercent(9), 80))
            .isInstanceOf(Impossible.class)
            .hasMessage("9 % cannot be mixed from 6 %: water only weakens it. Take a stronger bottle.")
            .satisfies(e -> assertThat(((Impossible) e).values()).containsExactly("9", "6"));
    }

    @Test
    void twentyVolumesFromTwentyVolumesNeedNoWaterHoweverTheBottleIsRead() {
        assertThat(Dilution.of(Peroxide.ofVolumes(20), Peroxide.ofPercent(6), 40).waterMl()).isCloseTo(0, within(1e-9));
        assertThat(Dilution.of(Peroxide.ofPercent(6), Peroxide.ofVolumes(20), 40).waterMl()).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest(name = "{0} ml")
    @CsvSource({ "0", "0.9", "2000.5", "-40", "NaN" })
    void volumesNobodyMixesAreRefused(double ml) {
        assertThatThrownBy(() -> Dilution.of(Peroxide.ofPercent(12), Peroxide.ofPercent(6), ml))
            .isInstanceOf(Impossible.class);
    }

    @Property
    void nothingIsLostAndTheGramsAgree(@ForAll @DoubleRange(min = 0.1, max = 50) double stock,
        @ForAll @DoubleRange(min = 0.01, max = 1) double share,
        @ForAll @DoubleRange(min = 1, max = 2000) double ml) {
        double wanted = Math.max(0.1, stock * share);
        Dilution dilution = Dilution.of(Peroxide.ofPercent(stock), Peroxide.ofPercent(wanted), ml);
        assertThat(dilution.stockMl() + dilution.waterMl()).isCloseTo(ml, within(1e-6));
        assertThat(dilution.waterMl()).isGreaterThanOrEqualTo(0);
        assertThat(dilution.stockMl() * stock).isCloseTo(ml * wanted, within(1e-6 * ml * wanted + 1e-9));
    }

    @Property
    void aStrongerBottleNeedsNoMoreOfIt(@ForAll @DoubleRange(min = 6, max = 49) double stock,
        @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
        double less = Dilution.of(Peroxide.ofPercent(stock + more), Peroxide.ofPercent(6), 40).stockMl();
        assertThat(less)
            .isLessThanOrEqualTo(Dilution.of(Peroxide.ofPercent(stock), Peroxide.ofPercent(6), 40).stockMl());
    }
}
