package foretress.assessment;

import java.util.List;

/**
 * How one name was read among words that somebody typed or copied.
 *
 * @param typed as it stands there
 * @param as the names it was read as; several where it could be any of them, none where it was not recognised
 * @param sure read beyond doubt; a near miss is read, and counts, but another name may be meant
 */
public record ReadAs(String typed, List<String> as, boolean sure) {
    public ReadAs {
        as = List.copyOf(as);
    }
}
