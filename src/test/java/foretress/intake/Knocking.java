package foretress.intake;

import foretress.Walker;
import foretress.invitation.Invitations;
import foretress.knowledge.Knowledge;
import foretress.questionnaire.Question;
import foretress.questionnaire.Question.Kind;
import jakarta.inject.Singleton;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Lets clients born on 4 March 1965 in through the door of a visit. */
@Singleton
public class Knocking {
    private static final Set<Kind> LISTS = Set.of(Kind.TREATMENTS, Kind.MEDICINES);

    private final Invitations invitations;
    private final Knowledge knowledge;

    Knocking(Invitations invitations, Knowledge knowledge) {
        this.invitations = invitations;
        this.knowledge = knowledge;
    }

    /** "Don't know" to every question that offers it; a date is then not known either. */
    public Map<String, List<String>> knowsNothing() {
        return knowledge.questionnaire().questions().stream()
            .filter(q -> q.unsure() && (!q.options().isEmpty() || LISTS.contains(q.kind())))
            .collect(Collectors.toMap(Question::id, q -> List.of(Question.DONT_KNOW)));
    }

    public String link(UUID visit) {
        return invitations.issueLink(visit, "server").replaceAll("^https?://[^/]+", "");
    }

    /** A client before the notice. */
    public Answering come(UUID visit, Map<String, List<String>> told) {
        return come(visit, LocalDate.of(1965, 3, 4), told);
    }

    public Answering come(UUID visit, LocalDate born, Map<String, List<String>> told) {
        Walker walker =
            new Walker().open(link(visit)).send(Map.of("day", "" + born.getDayOfMonth(),
                "month", "" + born.getMonthValue(), "year", "" + born.getYear()));
        return new Answering(walker, told);
    }
}
