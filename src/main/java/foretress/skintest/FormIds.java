package foretress.skintest;

import java.util.Optional;
import java.util.UUID;

/** Ids as they come in a form. */
final class FormIds {
    private FormIds() {}

    static Optional<UUID> of(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notAnId) {
            return Optional.empty();
        }
    }
}
