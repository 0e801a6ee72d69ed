package foretress.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The incompatibility test for metallic salts, as it stands at some moment.
 *
 * <p>A reaction on any tuft counts at any moment, the control included, and so does one seen the next day. Anything else counts
 * only after the full time. No change at all is no clear result. Clean hair lightens slightly; whether the bath could make it do
 * so is what the control shows, so without a control that lightened nothing quiet can be read.
 *
 * @param withoutTuft names of suspect stretches of hair of which no tuft was cut
 * @param ranSeconds how long the tufts have lain in the bath for certain
 * @param nextDay what was seen on the next day, letters of the tufts that came apart; empty while nobody looked
 */
public record MetalCheck(List<Tuft> tufts, List<String> withoutTuft, List<Seen> seen, long ranSeconds,
    Optional<Set<String>> nextDay) {
    /** Common practice: up to half an hour, watched from the first minute. */
    public static final long FULL_SECONDS = 30 * 60;

    public enum Result {
        RUNNING, SLIGHT_LIGHTENING, NOT_WHOLE, NOTHING_HAPPENED, REACTION;

        /** Nothing with peroxide comes on that hair, and nobody may decide otherwise. */
        public boolean shuts() {
            return this == NOTHING_HAPPENED || this == REACTION;
        }
    }

    public enum TuftResult { UNREAD, SLIGHT_LIGHTENING, CANNOT_BE_READ, NOTHING_HAPPENED, REACTION }

    /** Why a quiet test is not whole. */
    public enum Gap {
        NO_CONTROL, CONTROL_CANNOT_LIGHTEN, CONTROL_DID_NOT_LIGHTEN, TUFT_NOT_READ, TUFT_CANNOT_LIGHTEN,
        STRETCH_WITHOUT_TUFT
    }

    public MetalCheck {
        tufts = List.copyOf(tufts);
        withoutTuft = List.copyOf(withoutTuft);
        seen = List.copyOf(seen);
        nextDay = nextDay.map(Set::copyOf);
        if (ranSeconds < 0) {
            throw new IllegalArgumentException("less than no time: %d s".formatted(ranSeconds));
        }
    }

    public boolean fullTime() {
        return ranSeconds >= FULL_SECONDS;
    }

    /** A sign that ends the test: take the tufts out, nothing with peroxide on that hair. */
    public boolean stopsNow() {
        return tufts.stream().anyMatch(this::reacted);
    }

    private boolean reacted(Tuft tuft) {
        return of(tuft).stream().anyMatch(Seen::alarming)
            || nextDay.map(apart -> apart.contains(tuft.letter())).orElse(false);
    }

    /** "Nothing at all" means something only at the end; against a lightening noted before, the heavier of the two stands. */
    public TuftResult at(Tuft tuft) {
        if (reacted(tuft)) {
            return TuftResult.REACTION;
        }
        boolean nothing = of(tuft).stream().anyMatch(s -> s.sign() == TuftSign.NOTHING && s.second() >= FULL_SECONDS);
        boolean lighter = of(tuft).stream().anyMatch(s -> s.sign() == TuftSign.SLIGHTLY_LIGHTER);
        if (!fullTime() || !nothing && !lighter) {
            return TuftResult.UNREAD;
        }
        if (!tuft.couldLighten()) {
            return TuftResult.CANNOT_BE_READ;
        }
        return nothing ? TuftResult.NOTHING_HAPPENED : TuftResult.SLIGHT_LIGHTENING;
    }

    private List<Seen> of(Tuft tuft) {
        return seen.stream().filter(s -> s.tuft().equals(tuft.letter())).toList();
    }

    /** Tufts of the hair in question that nobody has read yet though the time is over. */
    public List<Tuft> toRead() {
        return fullTime() ? tufts.stream().filter(t -> at(t) == TuftResult.UNREAD).toList() : List.of();
    }

    /** The heaviest thing that is certain: a reaction; then no change at all, if the bath was shown to work; then a gap. */
    public Result result() {
        if (stopsNow()) {
            return Result.REACTION;
        }
        if (!fullTime()) {
            return Result.RUNNING;
        }
        List<Gap> gaps = gaps();
        boolean bathWorks = gaps.stream().noneMatch(MetalCheck::ofControl);
        if (bathWorks && quiet().anyMatch(t -> at(t) == TuftResult.NOTHING_HAPPENED)) {
            return Result.NOTHING_HAPPENED;
        }
        return gaps.isEmpty() ? Result.SLIGHT_LIGHTENING : Result.NOT_WHOLE;
    }

    private static boolean ofControl(Gap gap) {
        return gap == Gap.NO_CONTROL || gap == Gap.CONTROL_CANNOT_LIGHTEN || gap == Gap.CONTROL_DID_NOT_LIGHTEN;
    }

    private Stream<Tuft> quiet() {
        return tufts.stream().filter(t -> !t.control());
    }

    /** Everything that keeps a quiet test from being whole, the control's first. */
    public List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        controlGap().ifPresent(gaps::add);
        if (quiet().anyMatch(t -> t.couldLighten() && at(t) == TuftResult.UNREAD)) {
            gaps.add(Gap.TUFT_NOT_READ);
        }
        if (quiet().anyMatch(t -> !t.couldLighten())) {
            gaps.add(Gap.TUFT_CANNOT_LIGHTEN);
        }
        if (quiet().findAny().isEmpty() || !withoutTuft.isEmpty()) {
            gaps.add(Gap.STRETCH_WITHOUT_TUFT);
        }
        return List.copyOf(gaps);
    }

    private Optional<Gap> controlGap() {
        List<Tuft> controls = tufts.stream().filter(Tuft::control).toList();
        if (controls.isEmpty()) {
            return Optional.of(Gap.NO_CONTROL);
        }
        if (controls.stream().noneMatch(Tuft::couldLighten)) {
            return Optional.of(Gap.CONTROL_CANNOT_LIGHTEN);
        }
        boolean works = controls.stream().anyMatch(t -> at(t) == TuftResult.SLIGHT_LIGHTENING);
        return works ? Optional.empty() : Optional.of(Gap.CONTROL_DID_NOT_LIGHTEN);
    }
}
