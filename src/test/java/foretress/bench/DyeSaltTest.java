package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DyeSaltTest {
    /** Regulation (EC) No 1223/2009, Annex III entry 9a, states both: 2.0 % as base, 3.6 % as sulfate. */
    @Test
    void bothLimitsOfToluenediamineAreTheSame() {
        assertThat(DyeSalt.PTD_SULFATE.asBase(3.6)).isCloseTo(1.997, within(0.005));
    }

    /** Molar masses 108.14, 181.06 and 206.22 g/mol. */
    @Test
    void twoPerCentOfPhenylenediamineAsItsSalts() {
        assertThat(DyeSalt.PPD_DIHYDROCHLORIDE.asSalt(2)).isCloseTo(3.35, within(0.02));
        assertThat(DyeSalt.PPD_SULFATE.asSalt(2)).isCloseTo(3.81, within(0.02));
    }

    @Test
    void aSaltIsHeavierThanItsBase() {
        assertThatThrownBy(() -> new DyeSalt(200, 100)).isInstanceOf(IllegalArgumentException.class);
    }
}
