package foretress.invitation;

import java.util.Optional;
import java.util.UUID;

/** An id from an address: one that is none is like one that is not on file. */
final class UuidParam {
    private UuidParam() {}

    static Optional<UUID> of(String text) {
        try {
            return Optional.of(UUID.fromString(text));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
