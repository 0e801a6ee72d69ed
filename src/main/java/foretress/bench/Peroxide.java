package foretress.bench;

/**
 * Strength of a hydrogen peroxide solution. Kept in per cent w/v: grams in 100 ml. For the weak solutions of the trade w/v and
 * w/w differ by little (12 % w/w is about 12.5 % w/v, from memory); the unit is not changed on the way.
 *
 * <p>There are two readings of "volumes". The trade's takes 10 volumes as 3 %, and European law equates 40 volumes with 12 %
 * (Regulation 1223/2009, Annex III entry 12). By stoichiometry, one litre frees that many litres of oxygen (2 H2O2 → 2 H2O + O2,
 * gas at 0 °C and 101.325 kPa), 40 volumes would be 12.14 %. Labels and law speak the trade's language, so that is what
 * {@link #ofVolumes} reads; the other is shown beside it and never decides what is allowed.
 *
 * @param percent from 0.1 to 50, both included
 */
public record Peroxide(double percent) {
    public static final double WEAKEST = 0.1;
    public static final double STRONGEST = 50;
    /** Grams a mole, hydrogen peroxide. */
    public static final double MOLAR_MASS = 34.0147;
    /** Litres a mole, an ideal gas at 0 °C and 101.325 kPa. */
    public static final double MOLAR_VOLUME = 22.414;
    /** Grams a mole, urea peroxide (urea 60.06 and one hydrogen peroxide). */
    public static final double UREA_PEROXIDE_MOLAR_MASS = 94.07;
    /** The most a hair product may hold in the European Union, in per cent: Regulation 1223/2009, Annex III entry 12. */
    public static final double EU_HAIR_LIMIT = 12;

    private static final double TRADE = 10.0 / 3;
    /** A strength reached by converting is the strength meant, rounding of the machine apart. */
    private static final double ROUNDING = 1e-9;

    public Peroxide {
        Impossible.within(Impossible.Reason.STRENGTH_OUT_OF_RANGE, percent, WEAKEST, STRONGEST);
    }

    public static Peroxide ofPercent(double percent) {
        return new Peroxide(percent);
    }

    /** As bottles and law mean it: 10 volumes are 3 %, 40 volumes are 12 %. */
    public static Peroxide ofVolumes(double volumes) {
        return new Peroxide(volumes / TRADE);
    }

    /** As a chemist means it: litres of oxygen from one litre. */
    public static Peroxide ofOxygenVolumes(double volumes) {
        return ofMolPerLitre(volumes * 2 / MOLAR_VOLUME);
    }

    public static Peroxide ofMolPerLitre(double molPerLitre) {
        return new Peroxide(molPerLitre * MOLAR_MASS / 10);
    }

    /** What a product with this much urea peroxide (in per cent by mass) frees. */
    public static Peroxide ofUreaPeroxide(double percentByMass) {
        return new Peroxide(percentByMass * MOLAR_MASS / UREA_PEROXIDE_MOLAR_MASS);
    }

    /** Volumes as the trade and the law count them. */
    public double volumes() {
        return percent * TRADE;
    }

    /** Volumes by stoichiometry: a little fewer than the trade's, by less than 1.2 in a hundred. */
    public double oxygenVolumes() {
        return molPerLitre() * MOLAR_VOLUME / 2;
    }

    public double molPerLitre() {
        return 10 * percent / MOLAR_MASS;
    }

    public boolean withinEuHairLimit() {
        return percent <= EU_HAIR_LIMIT + ROUNDING;
    }

    /**
     * Strength on the head when one part of colour or lightener is mixed with so many parts of this.
     *
     * @param parts by mass, from 0.1 to 10
     */
    public double onTheHead(double parts) {
        Impossible.within(Impossible.Reason.PARTS_OUT_OF_RANGE, parts, 0.1, 10);
        return percent * parts / (1 + parts);
    }

    boolean strongerThan(Peroxide other) {
        return percent > other.percent + ROUNDING;
    }
}
