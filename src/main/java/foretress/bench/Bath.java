package foretress.bench;

/**
 * The bath of the incompatibility test, for the wanted volume and from whatever bottle is on the shelf. Both recipes are common
 * practice, each found alike on two teaching pages; no laboratory source is known for either.
 *
 * @param peroxide how the 6 % (20 volumes) part is made
 * @param ammoniaMl ammonium hydroxide, in ml
 * @param drops the same in drops, where the recipe counts drops; 0 where it does not
 */
public record Bath(Recipe recipe, Dilution peroxide, double ammoniaMl, int drops) {
    /** The strength both recipes ask for: 20 volumes. */
    public static final Peroxide STRENGTH = Peroxide.ofPercent(6);
    /** Enough to cover a tuft, in ml of peroxide. */
    public static final double LEAST_ML = 10;
    public static final double MOST_ML = 500;

    public enum Recipe {
        /** 40 ml and 2 ml, twenty to one. Its source does not say how strong the ammonia is. */
        TWENTY_TO_ONE(40, 2, 0, false),
        /** One fluid ounce and 20 drops of 28 % ammonia: about 1 ml, nearer thirty to one. */
        DROPS(29.57, 1, 20, true);

        private final double peroxideMl;
        private final double ammoniaMl;
        private final int drops;
        private final boolean ammoniaStrengthStated;

        Recipe(double peroxideMl, double ammoniaMl, int drops, boolean ammoniaStrengthStated) {
            this.peroxideMl = peroxideMl;
            this.ammoniaMl = ammoniaMl;
            this.drops = drops;
            this.ammoniaStrengthStated = ammoniaStrengthStated;
        }

        /** ml of peroxide as the source gives it. */
        public double peroxideMl() {
            return peroxideMl;
        }

        /** Parts of peroxide to one of ammonia. */
        public double ratio() {
            return peroxideMl / ammoniaMl;
        }

        public boolean ammoniaStrengthStated() {
            return ammoniaStrengthStated;
        }
    }

    /**
     * @param peroxideMl how much of the 6 % solution is wanted, from 10 to 500 ml
     * @throws Impossible when the bottle is weaker than 6 %, or the volume is out of range
     */
    public static Bath of(Recipe recipe, Peroxide shelf, double peroxideMl) {
        Impossible.within(Impossible.Reason.VOLUME_OUT_OF_RANGE, peroxideMl, LEAST_ML, MOST_ML);
        double times = peroxideMl / recipe.peroxideMl;
        int drops = recipe.drops == 0 ? 0 : (int) Math.max(1, Math.round(recipe.drops * times));
        return new Bath(recipe, Dilution.of(shelf, STRENGTH, peroxideMl), recipe.ammoniaMl * times, drops);
    }

    public double totalMl() {
        return peroxide.wantedMl() + ammoniaMl;
    }
}
