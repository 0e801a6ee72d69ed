package foretress.lexicon;

import java.util.List;

/**
 * What was found in a pasted list of ingredients. Places are characters of the text as pasted.
 *
 * @param found in the order of the text; the same substance may stand there twice
 * @param unknown words that are neither a substance known here nor mere connecting words
 * @param claims names in a claim that they are not in the product ("ammonia-free"): these are not substances of it
 */
public record LabelReading(List<Found> found, List<Unknown> unknown, List<Claim> claims) {

    /** How a name was recognised. */
    public enum Sureness { CAS_NUMBER, NAME, SPELLING_SLIP }

    /**
     * @param from first character
     * @param to one past the last
     * @param written as pasted
     * @param mayContain stands after "may contain": counted all the same
     */
    public record Found(Substance substance, int from, int to, String written, Sureness sureness, boolean mayContain) {}

    public record Unknown(int from, int to, String written) {}

    public record Claim(Substance substance, int from, int to, String written) {}

    public LabelReading {
        found = List.copyOf(found);
        unknown = List.copyOf(unknown);
        claims = List.copyOf(claims);
    }

    public boolean holds(Substance.Risk risk) {
        return found.stream().anyMatch(f -> f.substance().risk() == risk);
    }
}
