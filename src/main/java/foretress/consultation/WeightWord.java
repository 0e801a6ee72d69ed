package foretress.consultation;

import foretress.assessment.Weight;
import foretress.web.Stylist;
import foretress.web.WeightSaid;

/** Each weight's own word, as it stands beside its shape. */
final class WeightWord {
    private WeightWord() {}

    static String of(Weight weight, Stylist say) {
        return WeightSaid.of(weight, say);
    }
}
