package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for whatever hair, treatments and cuts. The seed is fixed, so that a failure comes again. */
class HairPropertiesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);
    private static final String SEED = "20261125";
    private static final double ROUNDING = 1e-6;

    @Provide
    Arbitrary<Treatment> treatments() {
        Arbitrary<Integer> last = Arbitraries.integers().between(0, 2_500);
        Arbitrary<Integer> unsure =
            Arbitraries.oneOf(Arbitraries.just(0), Arbitraries.integers().between(1, 800), Arbitraries.just(12_000));
        Arbitrary<Optional<Integer>> since = Arbitraries.integers().between(0, 2_000).optional();
        return Combinators.combine(Arbitraries.of(Residue.class), Arbitraries.of(Zone.class), last, unsure, since,
            Arbitraries.integers().between(0, 500), Arbitraries.doubles().between(0.2, 18))
            .as(HairPropertiesTest::treatment);
    }

    private static Treatment treatment(Residue residue, Zone zone, int last, int unsure, Optional<Integer> since,
        int firstUnsure, double apart) {
        Treatment once = Treatment.once(residue, day(last + unsure), day(last), zone, residue + " " + last);
        return since.map(days -> once.since(day(last + days + firstUnsure), day(last + days), apart)).orElse(once);
    }

    @Provide
    Arbitrary<Growth> growths() {
        return Combinators.combine(Arbitraries.doubles().between(0.1, 9), Arbitraries.integers().between(10, 400))
            .as((cm, days) -> Growth.measured(cm, day(days), TODAY));
    }

    @Provide
    Arbitrary<List<Cut>> cuts() {
        return Combinators.combine(Arbitraries.integers().between(0, 2_000), Arbitraries.doubles().between(0, 60))
            .as((days, cm) -> new Cut(day(days), cm)).list().ofMaxSize(2);
    }

    private static LocalDate day(int daysAgo) {
        return TODAY.minusDays(daysAgo);
    }

    private static Lane lane(Treatment treatment, double cm, Growth growth, List<Cut> cuts) {
        return StrandMap.of(new HairHistory(HairLength.measured(cm), List.of(treatment), cuts, growth), TODAY).lanes()
            .get(0);
    }

    private static Lane lane(Treatment treatment, double cm) {
        return lane(treatment, cm, Growth.PUBLISHED, List.of());
    }

    private static Treatment moved(Treatment t, int days) {
        var once = new Treatment(t.id(), t.residue(), t.earliest().minusDays(days), t.latest().minusDays(days),
            t.zone(), t.repeated(),
            t.sure(), t.metalPossible(), t.label(), t.said());
        return t.series()
            .map(s -> once.since(s.firstEarliest().minusDays(days), s.firstLatest().minusDays(days), s.monthsApart()))
            .orElse(once);
    }

    @Property(seed = SEED, tries = 1_000)
    void everyChanceIsAChanceAndEveryRangeInOrder(@ForAll("treatments") Treatment t,
        @ForAll @DoubleRange(min = 0.5, max = 120) double cm,
        @ForAll("growths") Growth growth, @ForAll("cuts") List<Cut> cuts) {
        Lane lane = lane(t, cm, growth, cuts);
        assertThat(lane.chanceLeft()).isBetween(0.0, 1.0).isLessThanOrEqualTo(lane.safetyChance());
        for (double at = 0; at <= cm; at += cm / 37) {
            assertThat(lane.chanceAt(at)).isBetween(0.0, 1.0);
            assertThat(lane.hairsAt(at)).isBetween(0, 10);
        }
        assertThat(lane.nearCm()).isGreaterThanOrEqualTo(0);
        lane.starts().ifPresent(starts -> {
            Range reaches = lane.reaches().orElseThrow();
            assertThat(starts.fromCm()).isLessThanOrEqualTo(starts.toCm()).isLessThanOrEqualTo(reaches.fromCm());
            assertThat(reaches.fromCm()).isLessThanOrEqualTo(reaches.toCm());
            assertThat(reaches.toCm()).isLessThanOrEqualTo(cm + ROUNDING);
        });
        lane.cutToCm().ifPresent(cut -> assertThat((double) cut).isBetween(1.0, lane.nearCm()));
    }

    @Property(seed = SEED, tries = 1_000)
    void longerAgoNeverLeavesMore(@ForAll("treatments") Treatment t, @ForAll @IntRange(max = 900) int days,
        @ForAll @DoubleRange(min = 0.5, max = 120) double cm, @ForAll("growths") Growth growth) {
        Lane earlier = lane(moved(t, days), cm, growth, List.of());
        Lane later = lane(t, cm, growth, List.of());
        assertThat(earlier.safetyChance()).isLessThanOrEqualTo(later.safetyChance());
        assertThat(earlier.nearCm()).isGreaterThanOrEqualTo(later.nearCm());
        if (t.earliest().isAfter(t.latest().minusYears(4))) {
            assertThat(earlier.chanceLeft()).isLessThanOrEqualTo(later.chanceLeft() + ROUNDING);
        }
    }

    @Property(seed = SEED, tries = 1_000)
    void longerHairNeverLeavesLess(@ForAll("treatments") Treatment t,
        @ForAll @DoubleRange(min = 0.5, max = 100) double cm,
        @ForAll @DoubleRange(max = 60) double more, @ForAll("growths") Growth growth, @ForAll("cuts") List<Cut> cuts) {
        Lane shorter = lane(t, cm, growth, cuts);
        Lane longer = lane(t, cm + more, growth, cuts);
        assertThat(longer.safetyChance()).isGreaterThanOrEqualTo(shorter.safetyChance());
        assertThat(longer.grownOut().isBefore(shorter.grownOut())).isFalse();
        if (t.earliest().isAfter(t.latest().minusYears(4))) {
            assertThat(longer.chanceLeft()).isGreaterThanOrEqualTo(shorter.chanceLeft() - ROUNDING);
        }
        assertThat(shorter.metalSuspected() && !longer.metalSuspected()).isFalse();
    }

    @Property(seed = SEED, tries = 1_000)
    void aShorterCutNeverLeavesMore(@ForAll("treatments") Treatment t,
        @ForAll @DoubleRange(min = 0.5, max = 100) double cm,
        @ForAll @IntRange(max = 2_000) int daysAgo, @ForAll @DoubleRange(max = 60) double to,
        @ForAll @DoubleRange(max = 30) double more) {
        Lane shorter = lane(t, cm, Growth.PUBLISHED, List.of(new Cut(day(daysAgo), to)));
        Lane longer = lane(t, cm, Growth.PUBLISHED, List.of(new Cut(day(daysAgo), to + more)));
        Lane uncut = lane(t, cm);
        assertThat(shorter.safetyChance()).isLessThanOrEqualTo(longer.safetyChance());
        assertThat(longer.safetyChance()).isLessThanOrEqualTo(uncut.safetyChance());
        assertThat(shorter.chanceLeft()).isLessThanOrEqualTo(longer.chanceLeft() + ROUNDING);
        for (double at = 0; at <= cm; at += cm / 23) {
            assertThat(shorter.chanceAt(at)).isLessThanOrEqualTo(longer.chanceAt(at) + ROUNDING);
        }
    }

    @Property(seed = SEED, tries = 1_000)
    void aDateToldLessPreciselyNeverLeavesLessOnTheSafeSide(@ForAll("treatments") Treatment t,
        @ForAll @IntRange(max = 2_000) int earlier,
        @ForAll @IntRange(max = 2_000) int later, @ForAll @DoubleRange(min = 0.5, max = 120) double cm,
        @ForAll("cuts") List<Cut> cuts) {
        Treatment wider = Treatment.once(t.residue(), t.earliest().minusDays(earlier), t.latest().plusDays(later),
            t.zone(), t.label());
        Treatment told = Treatment.once(t.residue(), t.earliest(), t.latest(), t.zone(), t.label());
        assertThat(lane(wider, cm, Growth.PUBLISHED, cuts).safetyChance())
            .isGreaterThanOrEqualTo(lane(told, cm, Growth.PUBLISHED, cuts).safetyChance());
        assertThat(lane(told, cm).metalSuspected() && !lane(wider, cm).metalSuspected()).isFalse();
        assertThat(lane(wider, cm).nearCm()).isLessThanOrEqualTo(lane(told, cm).nearCm());
    }

    @Property(seed = SEED, tries = 1_000)
    void doneAgainAndAgainHoldsAllThatOnceHolds(@ForAll("treatments") Treatment t,
        @ForAll @DoubleRange(min = 0.5, max = 100) double cm,
        @ForAll("growths") Growth growth, @ForAll("cuts") List<Cut> cuts) {
        Treatment once = Treatment.once(t.residue(), t.earliest(), t.latest(), t.zone(), t.label());
        Lane single = lane(once, cm, growth, cuts);
        for (Treatment repeated : List.of(once.againAndAgain(),
            once.since(t.earliest().minusDays(300), t.latest(), 1.5))) {
            Lane series = lane(repeated, cm, growth, cuts);
            assertThat(series.safetyChance()).isEqualTo(single.safetyChance());
            assertThat(series.farCm()).isGreaterThanOrEqualTo(single.farCm());
            for (double at = 0; at <= cm; at += cm / 23) {
                assertThat(series.chanceAt(at)).isGreaterThanOrEqualTo(single.chanceAt(at) - ROUNDING);
            }
        }
    }

    @Property(seed = SEED, tries = 1_000)
    void aMeasuredGrowthNeverLoosensTheSafeSide(@ForAll("treatments") Treatment t,
        @ForAll @DoubleRange(min = 0.5, max = 120) double cm,
        @ForAll("growths") Growth growth, @ForAll("cuts") List<Cut> cuts) {
        Lane measured = lane(t, cm, growth, cuts);
        Lane published = lane(t, cm, Growth.PUBLISHED, cuts);
        assertThat(measured.safetyChance()).isEqualTo(published.safetyChance());
        assertThat(measured.metalSuspected()).isEqualTo(published.metalSuspected());
        assertThat(measured.cutToCm()).isEqualTo(published.cutToCm());
        assertThat(measured.grownOut()).isEqualTo(published.grownOut());
        assertThat(growth.lowest()).isBetween(Growth.SLOW, growth.highest());
        assertThat(growth.highest()).isLessThanOrEqualTo(Growth.FAST);
    }

    /** New growth reaches back to the treatment before it, so lanes with a longer past may only reach further, never lose. */
    @Property(seed = SEED, tries = 1_000)
    void oneMoreTreatmentNeverTakesFromTheOthers(@ForAll("treatments") Treatment one,
        @ForAll("treatments") Treatment two,
        @ForAll @DoubleRange(min = 0.5, max = 100) double cm) {
        List<Treatment> both = new ArrayList<>(List.of(one, two));
        Lane alone = lane(one, cm);
        Lane beside = StrandMap.of(HairHistory.of(HairLength.measured(cm), both), TODAY).lanes().get(0);
        assertThat(beside.safetyChance()).isEqualTo(alone.safetyChance());
        assertThat(beside.chanceLeft()).isEqualTo(alone.chanceLeft());
        assertThat(beside.cutToCm()).isEqualTo(alone.cutToCm());
        for (double at = 0; at <= cm; at += cm / 23) {
            assertThat(beside.chanceAt(at)).isGreaterThanOrEqualTo(alone.chanceAt(at) - ROUNDING);
        }
        assertThat(beside.farCm()).isGreaterThanOrEqualTo(alone.farCm());
    }
}
