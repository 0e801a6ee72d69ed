package foretress.bench;

import static foretress.bench.TuftSign.NOTHING;
import static foretress.bench.TuftSign.SLIGHTLY_LIGHTER;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.bench.MetalCheck.Gap;
import foretress.bench.MetalCheck.Result;
import foretress.bench.MetalCheck.TuftResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MetalTestTest {
    private static final long FULL = MetalCheck.FULL_SECONDS;
    private static final Tuft SUSPECT = new Tuft("A", Tuft.Kind.SUSPECT, 20, 26, true);
    private static final Tuft ENDS = new Tuft("B", Tuft.Kind.OLDEST_ENDS, 36, 42, true);
    private static final Tuft CONTROL = new Tuft("C", Tuft.Kind.CONTROL, 0, 2, true);
    private static final List<Tuft> ALL = List.of(SUSPECT, ENDS, CONTROL);

    private static MetalCheck after(long seconds, List<Tuft> tufts, Seen... seen) {
        return new MetalCheck(tufts, List.of(), List.of(seen), seconds, Optional.empty());
    }

    private static Seen lighter(String tuft) {
        return new Seen(tuft, SLIGHTLY_LIGHTER, 600);
    }

    private static Seen nothing(String tuft) {
        return new Seen(tuft, NOTHING, FULL);
    }

    /** Two teaching pages: clean hair lightens only very slightly. Common practice. */
    @Test
    void slightLighteningOnEveryTuftIsTheOnlyQuietResult() {
        assertThat(after(FULL, ALL, lighter("A"), lighter("B"), lighter("C")).result())
            .isEqualTo(Result.SLIGHT_LIGHTENING);
    }

    /** The same two pages: silver shows no change at all, not even lightening; bismuth is taught to do the same. Common practice. */
    @Test
    void noChangeAtAllIsNotAClearResult() {
        MetalCheck test = after(FULL, ALL, nothing("A"), lighter("B"), lighter("C"));
        assertThat(test.at(SUSPECT)).isEqualTo(TuftResult.NOTHING_HAPPENED);
        assertThat(test.result()).isEqualTo(Result.NOTHING_HAPPENED);
    }

    /** Teaching pages: bubbles, heat, breaking, lightening at once, each alone. Common practice. */
    @ParameterizedTest
    @EnumSource(value = TuftSign.class, names = { "SLIGHTLY_LIGHTER", "NOTHING" }, mode = EnumSource.Mode.EXCLUDE)
    void anyAlarmingSignAloneEndsItAtAnyMinute(TuftSign sign) {
        for (Tuft tuft : ALL) {
            MetalCheck early = after(30, ALL, new Seen(tuft.letter(), sign, 30));
            assertThat(early.stopsNow()).isTrue();
            assertThat(early.result()).isEqualTo(Result.REACTION);
        }
    }

    @Test
    void lighteningInTheFirstMinuteIsLighteningAtOnce() {
        assertThat(after(59, ALL, new Seen("A", SLIGHTLY_LIGHTER, 59)).result()).isEqualTo(Result.REACTION);
        assertThat(after(60, ALL, new Seen("A", SLIGHTLY_LIGHTER, 60)).result()).isEqualTo(Result.RUNNING);
    }

    @Test
    void beforeTheFullTimeQuietSaysNothing() {
        MetalCheck test = after(FULL - 1, ALL, lighter("A"), lighter("B"), lighter("C"));
        assertThat(test.result()).isEqualTo(Result.RUNNING);
        assertThat(test.at(SUSPECT)).isEqualTo(TuftResult.UNREAD);
    }

    @Test
    void nothingSeenOnTheWayIsNotNothingAtTheEnd() {
        MetalCheck test = after(FULL, ALL, new Seen("A", NOTHING, 300), lighter("B"), lighter("C"));
        assertThat(test.toRead()).containsExactly(SUSPECT);
        assertThat(test.result()).isEqualTo(Result.NOT_WHOLE);
        assertThat(test.gaps()).containsExactly(Gap.TUFT_NOT_READ);
    }

    @Test
    void nothingAtTheEndStandsAgainstALighteningNotedBefore() {
        assertThat(after(FULL, ALL, lighter("A"), nothing("A"), lighter("B"), lighter("C")).result())
            .isEqualTo(Result.NOTHING_HAPPENED);
    }

    @Test
    void withoutAControlThatLightenedNothingQuietCanBeRead() {
        assertThat(after(FULL, List.of(SUSPECT, ENDS), lighter("A"), lighter("B")).gaps())
            .containsExactly(Gap.NO_CONTROL);
        assertThat(after(FULL, ALL, lighter("A"), lighter("B")).gaps()).contains(Gap.CONTROL_DID_NOT_LIGHTEN);
        MetalCheck deadBath = after(FULL, ALL, nothing("A"), nothing("B"), nothing("C"));
        assertThat(deadBath.result()).isEqualTo(Result.NOT_WHOLE);
        assertThat(deadBath.gaps()).containsExactly(Gap.CONTROL_DID_NOT_LIGHTEN);
    }

    @Test
    void aWhiteControlShowsNothing() {
        List<Tuft> white = List.of(SUSPECT, ENDS, CONTROL.lightens(false));
        MetalCheck test = after(FULL, white, lighter("A"), lighter("B"), lighter("C"));
        assertThat(test.result()).isEqualTo(Result.NOT_WHOLE);
        assertThat(test.gaps()).containsExactly(Gap.CONTROL_CANNOT_LIGHTEN);
    }

    @Test
    void aPreLightenedTuftCannotBeReadUnlessItReacts() {
        Tuft pale = ENDS.lightens(false);
        List<Tuft> tufts = List.of(SUSPECT, pale, CONTROL);
        MetalCheck quiet = after(FULL, tufts, lighter("A"), nothing("B"), lighter("C"));
        assertThat(quiet.at(pale)).isEqualTo(TuftResult.CANNOT_BE_READ);
        assertThat(quiet.result()).isEqualTo(Result.NOT_WHOLE);
        assertThat(after(90, tufts, new Seen("B", TuftSign.BUBBLES, 80)).result()).isEqualTo(Result.REACTION);
    }

    @Test
    void aStretchWithoutItsOwnTuftStaysOwed() {
        var test = new MetalCheck(ALL, List.of("hair removed last autumn"),
            List.of(lighter("A"), lighter("B"), lighter("C")), FULL, Optional.empty());
        assertThat(test.result()).isEqualTo(Result.NOT_WHOLE);
        assertThat(test.gaps()).containsExactly(Gap.STRETCH_WITHOUT_TUFT);
    }

    @Test
    void nothingAtAllOutweighsAStretchThatWasNotTried() {
        var test = new MetalCheck(ALL, List.of("ends"), List.of(nothing("A"), lighter("B"), lighter("C")), FULL,
            Optional.empty());
        assertThat(test.result()).isEqualTo(Result.NOTHING_HAPPENED);
    }

    /** Teaching pages: copper pulls apart after a day. Common practice. */
    @Test
    void hairThatComesApartTheNextDayIsAReaction() {
        List<Seen> seen = List.of(lighter("A"), lighter("B"), lighter("C"));
        assertThat(new MetalCheck(ALL, List.of(), seen, FULL, Optional.of(Set.of("B"))).result())
            .isEqualTo(Result.REACTION);
        assertThat(new MetalCheck(ALL, List.of(), seen, FULL, Optional.of(Set.of())).result())
            .isEqualTo(Result.SLIGHT_LIGHTENING);
    }

    @Property
    void oneMoreAlarmingSignIsAlwaysAReaction(@ForAll("seen") List<Seen> seen,
        @ForAll @LongRange(min = 0, max = 4000) long ran,
        @ForAll("alarming") Seen alarming) {
        List<Seen> more = new ArrayList<>(seen);
        more.add(alarming);
        assertThat(new MetalCheck(ALL, List.of(), more, ran, Optional.empty()).result()).isEqualTo(Result.REACTION);
    }

    /** Order of the results, light to heavy: slight lightening, not whole, nothing happened, reaction. */
    @Property
    void nothingSeenMakesTheResultNoLighter(@ForAll("seen") List<Seen> seen, @ForAll("tuft") String tuft) {
        List<Seen> more = new ArrayList<>(seen);
        more.add(new Seen(tuft, NOTHING, FULL + 5));
        Result before = new MetalCheck(ALL, List.of(), seen, FULL + 10, Optional.empty()).result();
        Result after = new MetalCheck(ALL, List.of(), more, FULL + 10, Optional.empty()).result();
        boolean control = tuft.equals("C");
        assertThat(after == Result.SLIGHT_LIGHTENING).isFalse();
        assertThat(control || after.compareTo(before) >= 0).isTrue();
    }

    @Property
    void waitingNeverClearsAReaction(@ForAll("seen") List<Seen> seen, @ForAll @LongRange(min = 0, max = 4000) long ran,
        @ForAll @LongRange(min = 0, max = 4000) long more) {
        Result before = new MetalCheck(ALL, List.of(), seen, ran, Optional.empty()).result();
        Result after = new MetalCheck(ALL, List.of(), seen, ran + more, Optional.empty()).result();
        assertThat(before == Result.REACTION && after != Result.REACTION).isFalse();
    }

    @Provide
    Arbitrary<List<Seen>> seen() {
        return Combinators.combine(tuft(), Arbitraries.of(TuftSign.class), Arbitraries.longs().between(0, FULL + 10))
            .as(Seen::new).list().ofMaxSize(8);
    }

    @Provide
    Arbitrary<Seen> alarming() {
        return Combinators.combine(tuft(), Arbitraries.of(TuftSign.ALARMING), Arbitraries.longs().between(0, FULL))
            .as(Seen::new);
    }

    @Provide
    Arbitrary<String> tuft() {
        return Arbitraries.of("A", "B", "C");
    }
}
