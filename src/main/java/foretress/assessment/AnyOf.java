package foretress.assessment;

import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A fact that sums up others: it has its worse class as soon as one of them has the class named for it, or a worse one. */
public final class AnyOf {
    private static final int NONE = 0;
    private static final int ONE = 1;

    private AnyOf() {}

    /**
     * @param def a fact of two classes that names others and the class from which each counts
     * @param defs the fact of an id
     * @param values what is known of a fact; one that could not be found makes the sum a fault too
     */
    public static FactValue find(FactDef def, Function<String, FactDef> defs, Function<FactDef, FactValue> values) {
        FactValue sum = FactValue.known(def, NONE, List.of());
        for (Map.Entry<String, String> part : def.sumOf().entrySet()) {
            FactDef of = defs.apply(part.getKey());
            sum = sum.heavier(counted(def, values.apply(of), of.ordinal(part.getValue())));
        }
        return sum;
    }

    private static FactValue counted(FactDef def, FactValue part, int from) {
        return new FactValue(def.id(), def.classes(), reaches(part.best(), from), reaches(part.worst(), from),
            reaches(part.worstAsked(), from), part.causes(), part.notAsked(), part.unanswered(), part.read(),
            part.fault());
    }

    private static int reaches(int ordinal, int from) {
        return ordinal >= from ? ONE : NONE;
    }
}
