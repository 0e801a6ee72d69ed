package foretress.assessment;

import foretress.hair.Residue;

/**
 * A treatment that can have been done, as knowledge describes it.
 *
 * @param leaves what it leaves in or on the hair
 * @param mayHoldMetal it may have left metal, whatever else it leaves
 */
public record TreatmentKind(String id, Residue leaves, boolean mayHoldMetal) {}
