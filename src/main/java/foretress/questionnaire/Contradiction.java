package foretress.questionnaire;

import java.util.List;
import java.util.Set;

/**
 * Two answers that cannot both be right. Which of them is, only the client can say; until then both stand, and so does whatever
 * weighs more.
 */
public record Contradiction(String id, Side one, Side other) {
    /**
     * One of the two.
     *
     * @param codes any of them makes it hold; of a list of treatments, kinds that stand on it
     */
    public record Side(String question, Set<String> codes) {
        public Side {
            codes = Set.copyOf(codes);
        }

        boolean holds(Answers said) {
            return said.codes(question).stream().anyMatch(codes::contains) || !treatments(said).isEmpty();
        }

        /** The treatments meant; none for a question of another kind. */
        public List<SaidTreatment> treatments(Answers said) {
            return said.to(question).map(answer -> answer instanceof Answer.Treatments list
                ? list.list().stream().filter(t -> codes.contains(t.what())).toList() : List.<SaidTreatment>of())
                .orElse(List.of());
        }
    }

    public boolean holds(Answers said) {
        return one.holds(said) && other.holds(said);
    }

    public List<String> questions() {
        return List.of(one.question, other.question);
    }
}
