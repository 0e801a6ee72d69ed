package foretress.assessment;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An answer that betrays a treatment the list of treatments may not name: it reads as that treatment at an unknown time.
 *
 * @param atLeast how many of a question's listed codes must be chosen, 1 or more
 * @param listedAs a treatment listed as one of these accounts for the answer; then the list speaks
 */
public record Cue(String what, List<String> listedAs, int atLeast, Map<String, List<String>> when) {
    public Cue {
        listedAs = List.copyOf(listedAs);
        when = Collections.unmodifiableMap(new LinkedHashMap<>(when)); // in its order, so that causes always read the same
    }
}
