package foretress.ledger;

import java.util.Optional;

/**
 * What a reading of the whole chain came to.
 *
 * @param whole how many entries hang together, from the first on
 * @param firstBroken the first entry that is missing or not as it was written, as far as the chain itself and the ends of slips tell
 * @param proven the last entry up to which a slip agrees; 0 when none does
 * @param against the first slip that disagrees although the chain hangs together: it was written anew after {@link #proven}
 */
public record TrailVerdict(long whole, Optional<Long> firstBroken, long proven, Optional<Slip> against) {
    /** Nothing missing, nothing altered, no slip against it. */
    public boolean holds() {
        return firstBroken.isEmpty() && against.isEmpty();
    }

    /** Entries that hang together and that no slip speaks for: whoever can write to the store could have written them anew, or cut what followed. */
    public long unproven() {
        return Math.max(0, whole - proven);
    }

    /** The same chain where it is known from elsewhere that it stops being itself at this entry. */
    TrailVerdict brokenAt(long number) {
        return new TrailVerdict(Math.min(whole, number - 1), Optional.of(number), Math.min(proven, number - 1),
            against);
    }
}
