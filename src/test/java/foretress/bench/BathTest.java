package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foretress.bench.Bath.Recipe;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BathTest {
    private static final Peroxide SIX = Peroxide.ofPercent(6);

    /** Two teaching pages from the United Kingdom: 20 parts of 6 % to one of ammonium hydroxide, 40 ml and 2 ml. Common practice. */
    @Test
    void fortyMillilitresTakeTwoOfAmmonia() {
        Bath bath = Bath.of(Recipe.TWENTY_TO_ONE, SIX, 40);
        assertThat(bath.ammoniaMl()).isCloseTo(2, within(1e-9));
        assertThat(bath.totalMl()).isCloseTo(42, within(1e-9));
        assertThat(Recipe.TWENTY_TO_ONE.ratio()).isEqualTo(20);
        assertThat(Recipe.TWENTY_TO_ONE.ammoniaStrengthStated()).isFalse();
    }

    /** Two teaching pages from the United States: one fluid ounce (29.57 ml) and 20 drops of 28 % ammonia, about 1 ml. Common practice. */
    @Test
    void oneFluidOunceTakesTwentyDrops() {
        Bath bath = Bath.of(Recipe.DROPS, SIX, 29.57);
        assertThat(bath.drops()).isEqualTo(20);
        assertThat(bath.ammoniaMl()).isCloseTo(1, within(0.01));
        assertThat(Recipe.DROPS.ratio()).isCloseTo(30, within(0.5));
        assertThat(Recipe.DROPS.ammoniaStrengthStated()).isTrue();
    }

    @Test
    void aStrongBottleIsThinnedFirst() {
        Bath bath = Bath.of(Recipe.TWENTY_TO_ONE, Peroxide.ofVolumes(40), 60);
        assertThat(bath.peroxide().stockMl()).isCloseTo(30, within(1e-9));
        assertThat(bath.peroxide().waterMl()).isCloseTo(30, within(1e-9));
        assertThat(bath.ammoniaMl()).isCloseTo(3, within(1e-9));
    }

    @Test
    void aBottleWeakerThanTheRecipeIsRefused() {
        assertThatThrownBy(() -> Bath.of(Recipe.TWENTY_TO_ONE, Peroxide.ofVolumes(10), 40))
            .isInstanceOf(Impossible.class)
            .hasMessage("6 % cannot be mixed from 3 %: water only weakens it. Take a stronger bottle.");
    }

    @Test
    void aDishOfLessThanTenMillilitresCoversNoTuft() {
        assertThatThrownBy(() -> Bath.of(Recipe.DROPS, SIX, 9.9)).isInstanceOf(Impossible.class);
        assertThat(Bath.of(Recipe.DROPS, SIX, 10).drops()).isEqualTo(7);
    }

    @Property
    void theRatioHoldsForEveryDish(@ForAll @DoubleRange(min = 10, max = 500) double ml) {
        assertThat(Bath.of(Recipe.TWENTY_TO_ONE, SIX, ml).ammoniaMl() * 20).isCloseTo(ml, within(1e-6));
        Bath drops = Bath.of(Recipe.DROPS, SIX, ml);
        assertThat(drops.drops()).isGreaterThanOrEqualTo(1).isBetween((int) Math.floor(drops.ammoniaMl() * 20),
            (int) Math.ceil(drops.ammoniaMl() * 20));
    }
}
