package foretress.told;

import java.util.List;
import java.util.Optional;

/**
 * A reaction as the client told it.
 *
 * @param felt at least one
 * @param began empty when the client does not know
 * @param words what was added, as typed
 * @param language the tag of the language it was told in
 */
public record Telling(List<Felt> felt, Optional<Showed> began, List<Where> where, String words, String language) {
    public Telling {
        felt = List.copyOf(felt);
        where = List.copyOf(where);
        if (felt.isEmpty()) {
            throw new IllegalArgumentException("a reaction that did nothing");
        }
    }

    boolean urgent() {
        return felt.stream().anyMatch(Felt::isUrgent);
    }
}
