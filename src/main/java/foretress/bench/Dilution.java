package foretress.bench;

/**
 * How much of the bottle and how much water make the wanted solution: C1 V1 = C2 V2, volumes taken to add up.
 *
 * @param stockMl of the bottle
 * @param waterMl distilled or boiled and cooled; 0 when the bottle already has the strength
 */
public record Dilution(Peroxide stock, Peroxide wanted, double wantedMl, double stockMl, double waterMl) {
    public static final double LEAST_ML = 1;
    public static final double MOST_ML = 2000;

    /**
     * @param wantedMl from 1 to 2000 ml
     * @throws Impossible when the wanted one is stronger than the bottle, or the volume is out of range
     */
    public static Dilution of(Peroxide stock, Peroxide wanted, double wantedMl) {
        Impossible.within(Impossible.Reason.VOLUME_OUT_OF_RANGE, wantedMl, LEAST_ML, MOST_ML);
        if (wanted.strongerThan(stock)) {
            throw new Impossible(Impossible.Reason.STRONGER_THAN_STOCK, wanted.percent(), stock.percent());
        }
        double stockMl = Math.min(wantedMl, wantedMl * wanted.percent() / stock.percent());
        return new Dilution(stock, wanted, wantedMl, stockMl, wantedMl - stockMl);
    }
}
