package foretress.assessment;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;

/**
 * Age in whole years on the day of the service. Whoever was born on 29 February is a year older on 1 March of a common year,
 * the stricter of the two readings.
 */
final class AgeFact {
    private static final int OF_AGE = 0;
    private static final int BELOW_SALON_AGE = 1;
    private static final int BELOW_LABEL_AGE = 2;

    private final Situation situation;

    AgeFact(Situation situation) {
        this.situation = situation;
    }

    FactValue find(FactDef def) {
        return situation.birthDate().map(born -> FactValue.known(def, classOf(born), List.of()))
            .orElse(FactValue.unknown(def, List.of()));
    }

    private int classOf(LocalDate born) {
        int years = Period.between(born, situation.serviceDay()).getYears();
        if (years < situation.policy().labelAge()) {
            return BELOW_LABEL_AGE;
        }
        return years < situation.policy().minimumAge() ? BELOW_SALON_AGE : OF_AGE;
    }
}
