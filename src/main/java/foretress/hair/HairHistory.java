package foretress.hair;

import java.util.List;

/**
 * All that is known of one head of hair.
 *
 * @param treatments in the order they are to be drawn
 * @param cuts known cuts, in any order
 * @param growth how fast this client's hair grows; {@link Growth#PUBLISHED} unless measured
 * @param slowed it may grow more slowly than any published bound, as with hair loss: time alone rules no metal out
 */
public record HairHistory(HairLength length, List<Treatment> treatments, List<Cut> cuts, Growth growth,
    boolean slowed) {
    public HairHistory {
        treatments = List.copyOf(treatments);
        cuts = List.copyOf(cuts);
    }

    /** Hair of which nothing says that it grows more slowly than others'. */
    public HairHistory(HairLength length, List<Treatment> treatments, List<Cut> cuts, Growth growth) {
        this(length, treatments, cuts, growth, false);
    }

    public static HairHistory of(HairLength length, List<Treatment> treatments) {
        return new HairHistory(length, treatments, List.of(), Growth.PUBLISHED);
    }
}
