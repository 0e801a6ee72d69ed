package foretress.questionnaire;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a posted page came to.
 *
 * @param answers what could be taken, by question
 * @param mistakes what could not, in the order of the page
 * @param said the words of the page as they were sent, for showing them again; only fields of the questions put
 * @param put the questions the page asked
 * @param adding the client is adding to a list or taking from it: the same page comes next
 */
public record FormReading(Answers answers, List<AnswerMistake> mistakes, Map<String, List<String>> said,
    Set<String> put, boolean adding) {
    public FormReading {
        mistakes = List.copyOf(mistakes);
        said = Map.copyOf(said);
        put = Set.copyOf(put);
    }

    public boolean clean() {
        return mistakes.isEmpty();
    }

    /**
     * Earlier answers with this page's over them. A question of the page that was left blank is no longer answered; one with
     * a mistake keeps its earlier answer until it is put right.
     */
    public Answers over(Answers earlier) {
        Answers rest = earlier;
        for (String question : put) {
            rest = mistaken(question) ? rest : rest.without(question);
        }
        return rest.and(answers);
    }

    private boolean mistaken(String question) {
        return mistakes.stream().anyMatch(m -> m.field().equals(question) || m.field().startsWith(question + "."));
    }

    /** The first value sent for a field, or nothing at all as an empty text. */
    public String said(String field) {
        List<String> values = said.getOrDefault(field, List.of());
        return values.isEmpty() ? "" : values.get(0);
    }

    public boolean ticked(String field, String code) {
        return said.getOrDefault(field, List.of()).contains(code);
    }

    public List<AnswerMistake> mistakesAt(String field) {
        return mistakes.stream().filter(m -> m.field().equals(field)).toList();
    }
}
