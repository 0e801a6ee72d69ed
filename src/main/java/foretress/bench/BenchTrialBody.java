package foretress.bench;

import java.util.Optional;

/**
 * A test cutting or strand test: what was mixed, and what came of it.
 *
 * @param percent peroxide in the mix's developer; 0 without
 * @param minutes planned
 * @param trial empty while it runs
 */
public record BenchTrialBody(String product, double percent, int minutes, Optional<Trial> trial) {
    public BenchTrialBody read(Trial read) {
        return new BenchTrialBody(product, percent, minutes, Optional.of(read));
    }

    /** Good only at the full planned time; poor at any. */
    public Optional<Trial.Result> result() {
        return trial.flatMap(t -> t.result().filter(r -> r == Trial.Result.POOR || t.minutes() >= minutes));
    }
}
