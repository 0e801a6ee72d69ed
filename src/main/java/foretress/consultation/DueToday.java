package foretress.consultation;

import foretress.intake.ShelfLife;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Answers;
import foretress.questionnaire.Question;
import foretress.visit.Visit;
import jakarta.enterprise.context.RequestScoped;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What is asked at the chair: answers past their time, and those that contradict each other. In the order of the questionnaire. */
@RequestScoped
class DueToday {
    private final ShelfLife shelfLife;
    private final Contradicted contradicted;
    private final Knowledge knowledge;

    DueToday(ShelfLife shelfLife, Contradicted contradicted, Knowledge knowledge) {
        this.shelfLife = shelfLife;
        this.contradicted = contradicted;
        this.knowledge = knowledge;
    }

    List<Question> of(Visit visit, Answers said) {
        Set<Question> due = new LinkedHashSet<>(shelfLife.due(visit, said));
        due.addAll(contradicted.toClear(visit, said));
        return knowledge.questionnaire().questions().stream().filter(due::contains).toList();
    }
}
