package foretress.hair;

/**
 * Which part of the hair a treatment covered, at the time. Where people measure nothing the reading is the one that leaves
 * more residue; what each zone assumes stands at {@link Reach}.
 */
public enum Zone {
    /** Scalp to tip. */
    WHOLE,
    /** The new growth of the time only, and all lengths too when it was done again and again. */
    REGROWTH,
    /** All but some first centimetres. */
    LENGTHS_ENDS,
    /** The last part, nobody knows how long. */
    ENDS,
    /** Some strands, scalp to tip; figures are for a hair of such a strand. */
    STRANDS,
    /** Not known: read as scalp to tip. */
    NOT_KNOWN
}
