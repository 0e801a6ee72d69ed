package foretress.bench;

import java.util.List;
import java.util.Optional;

/** Several hairs, part by part. The worst hair of a part counts for the part and the worst part for the head (our proposal). */
public record Elasticity(List<Pull> pulls) {
    public Elasticity {
        pulls = List.copyOf(pulls);
    }

    public Optional<Strength> at(Part part) {
        return pulls.stream().filter(p -> p.part() == part).map(Pull::strength).reduce(Strength::worse);
    }

    public Optional<Strength> worst() {
        return pulls.stream().map(Pull::strength).reduce(Strength::worse);
    }

    /** Parts from which no hair was pulled yet. */
    public List<Part> missing() {
        return Part.ALL.stream().filter(part -> at(part).isEmpty()).toList();
    }

    /** A caution or a failure counts at once; a pass only when hairs of every part were pulled. Empty while it says nothing. */
    public Optional<Strength> result() {
        return worst().filter(worst -> worst != Strength.PASS || missing().isEmpty());
    }
}
