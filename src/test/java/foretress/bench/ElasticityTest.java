package foretress.bench;

import static foretress.bench.Pull.Ending.BROKE;
import static foretress.bench.Pull.Ending.SPRANG_BACK;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class ElasticityTest {
    private static Pull good(Part part) {
        return new Pull(part, true, 100, 130, SPRANG_BACK);
    }

    private static Pull fair(Part part) {
        return new Pull(part, true, 100, 125, BROKE);
    }

    private static Pull bad(Part part) {
        return new Pull(part, true, 100, 110, BROKE);
    }

    @Test
    void oneBadHairAmongGoodOnesCounts() {
        var hair = new Elasticity(
            List.of(good(Part.ROOTS), good(Part.MID_LENGTHS), good(Part.ENDS), bad(Part.ENDS), good(Part.ENDS)));
        assertThat(hair.at(Part.ENDS)).contains(Strength.FAIL);
        assertThat(hair.at(Part.ROOTS)).contains(Strength.PASS);
        assertThat(hair.result()).contains(Strength.FAIL);
    }

    @Test
    void aPassNeedsEveryPart() {
        assertThat(new Elasticity(List.of(good(Part.ROOTS), good(Part.MID_LENGTHS))).result()).isEmpty();
        assertThat(new Elasticity(List.of(good(Part.ROOTS), good(Part.MID_LENGTHS))).missing())
            .containsExactly(Part.ENDS);
        assertThat(new Elasticity(List.of(good(Part.ROOTS), good(Part.MID_LENGTHS), good(Part.ENDS))).result())
            .contains(Strength.PASS);
    }

    @Test
    void aCautionCountsAtOnce() {
        assertThat(new Elasticity(List.of(fair(Part.ROOTS))).result()).contains(Strength.CAUTION);
    }

    @Test
    void noHairSaysNothing() {
        assertThat(new Elasticity(List.of()).result()).isEqualTo(Optional.empty());
    }

    @Property
    void oneMoreHairNeverMakesItBetter(@ForAll("hairs") List<Pull> hairs, @ForAll("hair") Pull another) {
        List<Pull> more = new ArrayList<>(hairs);
        more.add(another);
        Optional<Strength> before = new Elasticity(hairs).worst();
        Optional<Strength> after = new Elasticity(more).worst();
        assertThat(after).isPresent();
        before.ifPresent(worst -> assertThat(after.orElseThrow()).isGreaterThanOrEqualTo(worst));
    }

    @Property
    void theWorstPartIsTheHead(@ForAll("hairs") List<Pull> hairs) {
        var elasticity = new Elasticity(hairs);
        assertThat(Part.ALL.stream().flatMap(p -> elasticity.at(p).stream()).max(Strength::compareTo))
            .isEqualTo(elasticity.worst());
    }

    @Provide
    Arbitrary<List<Pull>> hairs() {
        return hair().list().ofMaxSize(12);
    }

    @Provide
    Arbitrary<Pull> hair() {
        return Combinators
            .combine(Arbitraries.of(Part.class), Arbitraries.of(true, false), Arbitraries.integers().between(20, 200),
                Arbitraries.integers().between(2, 90), Arbitraries.of(Pull.Ending.class))
            .as((part, wet, rest, share, ending) -> new Pull(part, wet, rest, rest * (1 + share / 100.0), ending));
    }
}
