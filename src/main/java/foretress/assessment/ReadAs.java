package foretress.assessment;

import java.util.List;
import java.util.Optional;

/**
 * How one name was read among words that somebody typed or copied.
 *
 * @param typed as it stands there
 * @param as the names it was read as; several where it could be any of them, none where it was not recognised
 * @param sure read beyond doubt; a near miss is read, and counts, but another name may be meant
 * @param lookedUp who told what the name means, where no lexicon does; none in words kept before anybody could
 */
public record ReadAs(String typed, List<String> as, boolean sure, Optional<LookedUp> lookedUp) {
    public ReadAs {
        as = List.copyOf(as);
        lookedUp = lookedUp == null ? Optional.empty() : lookedUp;
    }

    /** By the lexicon alone. */
    public ReadAs(String typed, List<String> as, boolean sure) {
        this(typed, as, sure, Optional.empty());
    }
}
