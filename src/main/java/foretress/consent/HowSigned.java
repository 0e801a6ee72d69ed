package foretress.consent;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * One signing as the paper tells it.
 *
 * @param document the stored document's id
 * @param version 1 for a visit's first signing, one more for each that supersedes it
 */
public record HowSigned(UUID document, int version, Optional<Superseded> supersedes, Evidence evidence) {

    public HowSigned {
        if (version < 1 || (version > 1) != supersedes.isPresent()) {
            throw new IllegalArgumentException("version %d with%s an earlier one"
                .formatted(version, supersedes.isPresent() ? "" : "out"));
        }
    }

    /** The signing this one takes the place of. */
    public record Superseded(UUID document, int version, Instant signedAt) {}
}
