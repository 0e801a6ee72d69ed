package foretress.bench;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Weight;
import foretress.bench.Porosity.Feel;
import foretress.bench.Porosity.Look;
import foretress.bench.Porosity.Reading;
import foretress.bench.Porosity.Touch;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PorosityTest {
    private static final Feel EVEN = new Feel(Touch.SMOOTH, Look.SHINES);
    private static final Feel ROUGH = new Feel(Touch.RUFFLED, Look.SHINES);
    private static final Feel UNCLEAR = new Feel(Touch.CANNOT_TELL, Look.SHINES);

    @Test
    void roughEndsMakeTheHairPorous() {
        var hair = new Porosity(Map.of(Part.ROOTS, EVEN, Part.MID_LENGTHS, EVEN, Part.ENDS, ROUGH));
        assertThat(hair.at(Part.ROOTS)).contains(Reading.AVERAGE);
        assertThat(hair.at(Part.ENDS)).contains(Reading.POROUS);
        assertThat(hair.result()).contains(Reading.POROUS);
    }

    @Test
    void evenNeedsEveryPart() {
        assertThat(new Porosity(Map.of(Part.ROOTS, EVEN, Part.MID_LENGTHS, EVEN)).result()).isEmpty();
        assertThat(new Porosity(Map.of(Part.ROOTS, EVEN, Part.MID_LENGTHS, EVEN, Part.ENDS, EVEN)).result())
            .contains(Reading.AVERAGE);
    }

    @Test
    void cannotTellIsNeverEven() {
        var hair = new Porosity(Map.of(Part.ROOTS, EVEN, Part.MID_LENGTHS, UNCLEAR, Part.ENDS, EVEN));
        assertThat(hair.result()).isEmpty();
        assertThat(hair.unread()).containsExactly(Part.MID_LENGTHS);
    }

    @Test
    void onePorousPartIsEnoughThoughNothingElseWasTried() {
        assertThat(new Porosity(Map.of(Part.ENDS, ROUGH)).result()).contains(Reading.POROUS);
        assertThat(new Porosity(Map.of()).result()).isEqualTo(Optional.empty());
    }

    @Property(tries = 500)
    void aRougherTouchNeverReadsBetter(@ForAll Look roots, @ForAll Look ends, @ForAll Touch before) {
        Map<Part, Feel> parts = new EnumMap<>(Map.of(Part.ROOTS, new Feel(Touch.SMOOTH, roots), Part.MID_LENGTHS, EVEN,
            Part.ENDS, new Feel(before, ends)));
        Optional<Reading> was = new Porosity(parts).result();
        parts.put(Part.ENDS, new Feel(Touch.RUFFLED, ends));
        assertThat(new Porosity(parts).result().orElseThrow()).isIn(Reading.POROUS, Reading.OVER_POROUS);
        assertThat(was).isIn(Optional.empty(), Optional.of(Reading.AVERAGE), Optional.of(Reading.RESISTANT),
            Optional.of(Reading.POROUS), Optional.of(Reading.OVER_POROUS));
    }

    @Test
    @DisplayName("R43: each of the four classes is read from the touch and look that are taught for it")
    void eachClassIsReadFromItsOwnTouchAndLook() {
        for (Reading reading : Reading.values()) {
            assertThat(reading.typical().reading()).contains(reading);
        }
        assertThat(Feel.UNKNOWN.reading()).isEmpty();
        assertThat(new Feel(Touch.HARD, Look.DAMAGED).reading()).contains(Reading.OVER_POROUS);
        assertThat(new Feel(Touch.HARD, Look.CANNOT_TELL).reading()).isEmpty();
    }

    @Test
    @DisplayName("R43: on the bench only average hair reads as nothing found")
    void eachClassHasAWeightOfItsOwn() {
        assertThat(BenchSay.weight("over-porous")).isEqualTo(Weight.PREVENTS);
        assertThat(BenchSay.weight("porous")).isEqualTo(Weight.RESTRICTS);
        assertThat(BenchSay.weight("resistant")).isEqualTo(Weight.NOTE);
        assertThat(BenchSay.weight("average")).isEqualTo(Weight.NOTHING_FOUND);
    }

    @Test
    void oneDamagedPartOutweighsEveryOther() {
        var hair = new Porosity(Map.of(Part.ROOTS, Reading.RESISTANT.typical(), Part.MID_LENGTHS, ROUGH, Part.ENDS,
            Reading.OVER_POROUS.typical()));
        assertThat(hair.at(Part.ROOTS)).contains(Reading.RESISTANT);
        assertThat(hair.result()).contains(Reading.OVER_POROUS);
    }
}
