package foretress.hair;

import java.util.List;

/**
 * All that is known of one head of hair.
 *
 * @param treatments in the order they are to be drawn
 * @param cuts known cuts, in any order
 * @param growth how fast this client's hair grows; {@link Growth#PUBLISHED} unless measured
 */
public record HairHistory(HairLength length, List<Treatment> treatments, List<Cut> cuts, Growth growth) {
    public HairHistory {
        treatments = List.copyOf(treatments);
        cuts = List.copyOf(cuts);
    }

    public static HairHistory of(HairLength length, List<Treatment> treatments) {
        return new HairHistory(length, treatments, List.of(), Growth.PUBLISHED);
    }
}
