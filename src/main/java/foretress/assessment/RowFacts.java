package foretress.assessment;

import foretress.questionnaire.Question;
import java.util.ArrayList;
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

    FactValue find(FactDef def) {
        int best = 0;
        int worst = 0;
        int worstAsked = 0;
        for (FactDef.Row row : rows(def)) {
            Truth holds = asking.holds(row.when(), false);
            best = holds == Truth.TRUE ? Math.max(best, row.ordinal()) : best;
            worst = holds == Truth.FALSE ? worst : Math.max(worst, row.ordinal());
            worstAsked = asking.holds(row.when(), true) == Truth.FALSE ? worstAsked : Math.max(worstAsked, row.ordinal());
        }
        List<Question> read = read(def);
        return new FactValue(def.id(), def.classes(), best, worst, worstAsked, causes(def, worst), asking.notAsked(read),
            asking.unanswered(read), Optional.empty());
    }

    /** The questions of the rows that give the worst class, or of all rows when none does. */
    private List<String> causes(FactDef def, int worst) {
        Set<String> causes = new LinkedHashSet<>();
        for (FactDef.Row row : rows(def)) {
            if (worst == 0 || row.ordinal() == worst && asking.holds(row.when(), false) != Truth.FALSE) {
                row.when().keySet().stream().filter(this::shown).forEach(causes::add);
            }
        }
        return List.copyOf(causes);
    }

    private List<FactDef.Row> rows(FactDef def) {
        return def.rows().stream().filter(row -> row.under(asking.policy())).toList();
    }

    private boolean shown(String id) {
        Question question = asking.question(id);
        return asking.answer(question).isPresent() || asking.put(question) && !asking.closed(question);
    }

    private List<Question> read(FactDef def) {
        Set<String> read = new LinkedHashSet<>();
        def.rows().forEach(row -> read.addAll(row.when().keySet()));
        return new ArrayList<>(read.stream().map(asking::question).toList());
    }
}
