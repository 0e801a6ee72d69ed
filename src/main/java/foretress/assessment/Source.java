package foretress.assessment;

import java.util.Optional;

/**
 * Where a rule comes from.
 *
 * @param place chapter, section or row
 * @param read the day it was read, as written
 */
public record Source(String title, Optional<String> place, Optional<String> link, Optional<String> read, Status status) {
    public enum Status { PUBLISHED, COMMON_PRACTICE, FROM_MEMORY, OWN_DECISION }
}
