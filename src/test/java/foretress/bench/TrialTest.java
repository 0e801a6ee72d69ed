package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.bench.Trial.Bounce;
import foretress.bench.Trial.Colour;
import foretress.bench.Trial.Condition;
import foretress.bench.Trial.Result;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class TrialTest {
    private static Trial trial(Colour colour, Condition condition, Bounce bounce) {
        return new Trial("Invented 6-0", 6, 35, colour, condition, bounce);
    }

    @Test
    void goodIsAllThree() {
        assertThat(trial(Colour.AS_PLANNED, Condition.AS_BEFORE, Bounce.SPRANG_BACK).result()).contains(Result.GOOD);
    }

    @Test
    void notPulledIsNotGoodYet() {
        assertThat(trial(Colour.AS_PLANNED, Condition.AS_BEFORE, Bounce.NOT_PULLED).result()).isEmpty();
    }

    @Property
    void anythingBadIsPoor(@ForAll Colour colour, @ForAll Condition condition, @ForAll Bounce bounce) {
        boolean bad = colour == Colour.OTHERWISE || condition != Condition.AS_BEFORE || bounce == Bounce.STAYED_LONG
            || bounce == Bounce.BROKE;
        Optional<Result> result = trial(colour, condition, bounce).result();
        assertThat(result.equals(Optional.of(Result.POOR))).isEqualTo(bad);
    }

    @Test
    void minutesNobodyLeavesItAreRefused() {
        assertThatThrownBy(
            () -> new Trial("Invented", 6, 0, Colour.AS_PLANNED, Condition.AS_BEFORE, Bounce.SPRANG_BACK))
            .isInstanceOf(Impossible.class)
            .hasMessage("0 minutes is outside 1 to 180 minutes.");
    }
}
