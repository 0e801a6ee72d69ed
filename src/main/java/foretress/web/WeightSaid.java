package foretress.web;

import foretress.assessment.Weight;

/** Each weight's own word, as it stands beside its shape on the staff's pages. */
public final class WeightSaid {
    private WeightSaid() {}

    public static String of(Weight weight, StylistWords say) {
        return switch (weight) {
            case NOTHING_FOUND -> say.weight_nothing_found();
            case NOTE -> say.weight_note();
            case RESTRICTS -> say.weight_restricts();
            case TEST_FIRST -> say.weight_test_first();
            case COULD_NOT_BE_ASSESSED -> say.weight_could_not_be_assessed();
            case PREVENTS -> say.weight_prevents();
        };
    }
}
