package foretress.hair;

/** What a treatment leaves in or on the hair. Metal, dye and lightening stay until cut off; nothing here fades with time. */
public enum Residue {
    /** Salts of lead, silver, bismuth, copper and the like: colour restorers, compound henna. */
    METAL(Pattern.HATCH),
    /** Henna and other plants without metal. */
    HENNA(Pattern.LEAVES),
    /** Permanent and demi-permanent colour, toners. */
    OXIDATIVE(Pattern.SOLID),
    /** Bleach, highlights, anything that took pigment away. */
    LIGHTENED(Pattern.OPEN),
    /** Direct dye. It is said to wash out; on lightened or porous hair some stays, so it never counts as gone by time. */
    WASHES_OUT(Pattern.STRIPES),
    /** Perm by thioglycolate or its ester. */
    PERMED(Pattern.WAVE),
    /** Straightening by thioglycolate. */
    THIO_STRAIGHTENED(Pattern.WAVE),
    /** Straightening by a hydroxide. */
    RELAXED(Pattern.WAVE),
    /** Nobody can say what it was; it may hold metal. */
    UNKNOWN(Pattern.QUESTIONS);

    /** The drawing of a band, told apart without colour. */
    public enum Pattern {
        HATCH, LEAVES, SOLID, OPEN, STRIPES, WAVE, QUESTIONS
    }

    private final Pattern pattern;

    Residue(Pattern pattern) {
        this.pattern = pattern;
    }

    public Pattern pattern() {
        return pattern;
    }

    boolean mayHoldMetal() {
        return this == METAL || this == UNKNOWN;
    }
}
