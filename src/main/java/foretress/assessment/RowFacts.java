package foretress.assessment;

import foretress.assessment.Asking.Asked;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Facts from rows: the heaviest row that holds gives the best class, the heaviest that may hold the worst. */
final class RowFacts {
    private final Asking asking;

    RowFacts(Asking asking) {
        this.asking = asking;
    }

    /** @param read the questions its rows look at */
    FactValue find(FactDef def, List<String> read) {
        int best = 0;
        int worst = 0;
        int worstAsked = 0;
        for (FactDef.Row row : def.rows()) {
            if (!row.under(asking.policy())) {
                continue;
            }
            Truth holds = asking.holds(row.when(), false);
            if (holds == Truth.TRUE) {
                best = Math.max(best, row.ordinal());
            }
            if (holds != Truth.FALSE) {
                worst = Math.max(worst, row.ordinal());
                worstAsked =
                    asking.holds(row.when(), true) == Truth.FALSE ? worstAsked : Math.max(worstAsked, row.ordinal());
            }
        }
        List<Asked> questions = asking.asked(read);
        return new FactValue(def.id(), def.classes(), best, worst, worstAsked, causes(def, worst, questions),
            asking.notAsked(questions),
            asking.unanswered(questions), List.of(), Optional.empty());
    }

    /** The questions of the rows that give the worst class, or of all rows when none does. */
    private List<String> causes(FactDef def, int worst, List<Asked> read) {
        Set<String> causes = new LinkedHashSet<>();
        if (worst == 0) {
            shown(read, causes);
        }
        for (FactDef.Row row : def.rows()) {
            if (worst > 0 && row.ordinal() == worst && row.under(asking.policy())
                && asking.holds(row.when(), false) != Truth.FALSE) {
                shown(asking.asked(row.when().keySet()), causes);
            }
        }
        return List.copyOf(causes);
    }

    private static void shown(List<Asked> questions, Set<String> causes) {
        for (Asked question : questions) {
            if (question.shown()) {
                causes.add(question.id());
            }
        }
    }
}
