package foretress.bench;

/**
 * A dye's salt and its free base: labels give the one, limits often the other.
 *
 * @param base grams a mole
 * @param salt grams a mole, for each mole of base
 */
public record DyeSalt(double base, double salt) {
    /** Toluene-2,5-diamine and its sulfate. */
    public static final DyeSalt PTD_SULFATE = new DyeSalt(122.17, 220.25);
    /** p-Phenylenediamine and its dihydrochloride. */
    public static final DyeSalt PPD_DIHYDROCHLORIDE = new DyeSalt(108.14, 181.06);
    /** p-Phenylenediamine and its sulfate. */
    public static final DyeSalt PPD_SULFATE = new DyeSalt(108.14, 206.22);

    public DyeSalt {
        if (!(base > 0 && salt > base)) {
            throw new IllegalArgumentException("not a base and its salt: %s and %s g/mol".formatted(base, salt));
        }
    }

    public double asBase(double percentOfSalt) {
        return percentOfSalt * base / salt;
    }

    public double asSalt(double percentOfBase) {
        return percentOfBase * salt / base;
    }
}
