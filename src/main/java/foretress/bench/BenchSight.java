package foretress.bench;

import java.time.Instant;
import java.util.UUID;

/**
 * Something seen on a tuft, with who saw it.
 *
 * @param struckWhy why it was tapped in error; empty while it stands
 */
public record BenchSight(UUID id, Seen seen, UUID by, Instant at, String struckWhy) {
    public boolean struck() {
        return !struckWhy.isEmpty();
    }
}
