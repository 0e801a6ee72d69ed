package foretress.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was prepared and read for an incompatibility test, what was seen on the way apart.
 *
 * @param withoutTuft stretches that would need a tuft of their own and got none
 * @param names what the suspect stretches are called, by letter
 */
public record BenchMetalBody(List<Tuft> tufts, List<String> withoutTuft, Map<String, String> names, Optional<Mix> mix,
    List<Warmth> warmth, Optional<NextDay> nextDay) {
    /** What was mixed from what, so that the bath can be worked out again. */
    public record Mix(Bath.Recipe recipe, double shelfPercent, double peroxideMl) {
        public Bath bath() {
            return Bath.of(recipe, Peroxide.ofPercent(shelfPercent), peroxideMl);
        }
    }

    /** Outside of the dish, in °C. */
    public record Warmth(double celsius, long second) {}

    /**
     * The second look.
     *
     * @param afterMillis since the tufts went in, by the steady counter
     * @param apart letters of the tufts that came apart
     * @param day in the salon's zone, ISO
     */
    public record NextDay(long afterMillis, List<String> apart, String day) {}

    public BenchMetalBody {
        tufts = List.copyOf(tufts);
        withoutTuft = List.copyOf(withoutTuft);
        names = Map.copyOf(names);
        warmth = List.copyOf(warmth);
    }

    public static BenchMetalBody cut(List<Tuft> tufts, List<String> withoutTuft, Map<String, String> names) {
        return new BenchMetalBody(tufts, withoutTuft, names, Optional.empty(), List.of(), Optional.empty());
    }

    /** What the stretch of this tuft is called; empty for one that has no name. */
    public String named(String letter) {
        return names.getOrDefault(letter, "");
    }

    public BenchMetalBody mixed(Mix other) {
        return new BenchMetalBody(tufts, withoutTuft, names, Optional.of(other), warmth, nextDay);
    }

    public BenchMetalBody felt(Warmth one) {
        List<Warmth> more = new ArrayList<>(warmth);
        more.add(one);
        return new BenchMetalBody(tufts, withoutTuft, names, mix, more, nextDay);
    }

    public BenchMetalBody lookedAt(NextDay look) {
        return new BenchMetalBody(tufts, withoutTuft, names, mix, warmth, Optional.of(look));
    }
}
