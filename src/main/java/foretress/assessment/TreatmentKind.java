package foretress.assessment;

import foretress.hair.Residue;
import java.util.Optional;

/**
 * A treatment that can have been done, as knowledge describes it.
 *
 * @param leaves what it leaves in or on the hair
 * @param mayHoldMetal it may have left metal, whatever else it leaves
 * @param proof what a client's word for it needs; empty when the word is enough
 */
public record TreatmentKind(String id, Residue leaves, boolean mayHoldMetal, Optional<Proof> proof) {

    /**
     * A list of ingredients has to bear it out.
     *
     * @param dyes the only class of dye that the list may name, and does
     * @param without the treatment it counts as otherwise
     */
    public record Proof(String dyes, String without) {}

    public TreatmentKind(String id, Residue leaves, boolean mayHoldMetal) {
        this(id, leaves, mayHoldMetal, Optional.empty());
    }
}
