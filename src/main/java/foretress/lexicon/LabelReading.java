package foretress.lexicon;

import java.util.List;

/**
 * What was found in a pasted list of ingredients. Places are characters of the text as pasted.
 *
 * @param found in the order of the text; the same substance may stand there twice
 * @param unknown words that are neither a substance known here nor mere connecting words
 * @param claims names in a claim that they are not in the product ("ammonia-free"): these are not substances of it
 * @param beside all other words, so that every word of the text stands in one of the four
 */
public record LabelReading(List<Found> found, List<Unknown> unknown, List<Claim> claims, List<Beside> beside) {

    /** How a name was recognised. */
    public enum Sureness { CAS_NUMBER, NAME, SPELLING_SLIP }

    /**
     * @param from first character
     * @param to one past the last
     * @param written as pasted
     * @param mayContain stands after "may contain": counted all the same
     */
    public record Found(Substance substance, int from, int to, String written, Sureness sureness, boolean mayContain) {}

    /**
     * @param near what it might be a damaged spelling of, where it could be several: each of them is to be reckoned with
     */
    public record Unknown(int from, int to, String written, List<Substance> near) {
        public Unknown {
            near = List.copyOf(near);
        }
    }

    /** Words that name nothing in the product: connecting words, amounts, the words of a claim, the name of a shade. */
    public record Beside(int from, int to, String written, Reason reason) {}

    /** Why words name nothing; {@code GROUP} names a group of which the list names a member as grave ("contains persulfates"). */
    public enum Reason {
        CONNECTING, AMOUNT, CLAIM, SHADE, GROUP
    }

    public record Claim(Substance substance, int from, int to, String written) {}

    public LabelReading {
        found = List.copyOf(found);
        unknown = List.copyOf(unknown);
        claims = List.copyOf(claims);
        beside = List.copyOf(beside);
    }

    /** Whether every word is known beyond doubt; a damaged spelling is read, but somebody has to look. */
    public boolean allSure() {
        return unknown.isEmpty() && found.stream().noneMatch(f -> f.sureness() == Sureness.SPELLING_SLIP);
    }

    public boolean holds(Substance.Risk risk) {
        return found.stream().anyMatch(f -> f.substance().risk() == risk);
    }
}
