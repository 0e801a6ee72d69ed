package foretress.intake;

import foretress.intake.QuestionView.Slip;
import foretress.questionnaire.Question;
import foretress.questionnaire.TickList;
import foretress.web.Mistake;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What stands together on a client's page: one question, or several as one list to tick.
 *
 * @param ask the list's own question; empty over a question that stands by itself
 * @param alone nothing else is on the page, so that its words are the heading
 * @param groups by question, what its rows have in common; of a list only, and of those whose rows do not speak for themselves
 */
public record Block(String ask, List<QuestionView> questions, boolean alone, Map<String, String> groups) {
    public Block {
        groups = Map.copyOf(groups);
    }

    /** One question that stands by itself. */
    static Block of(QuestionView question, boolean alone) {
        return new Block("", List.of(question), alone, Map.of());
    }

    /**
     * Rows that stand together.
     *
     * @param label what they have in common; may be nothing
     * @param ids names their questions for {@link TickList}
     */
    public record Group(String label, String ids, List<Tick> ticks) {}

    /** One thing to tick: the question it answers, and where a link to that question lands. */
    public record Tick(String name, String anchor, String code, String label, boolean chosen) {}

    public boolean list() {
        return !ask.isEmpty();
    }

    public QuestionView first() {
        return questions.get(0);
    }

    /** A question at a time; those without a label of their own together. */
    public List<Group> grouped() {
        List<List<QuestionView>> groups = new ArrayList<>();
        for (QuestionView q : questions) {
            boolean more =
                !groups.isEmpty() && (label(q) + label(groups.get(groups.size() - 1).get(0))).isEmpty();
            if (!more) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(q);
        }
        return groups.stream().map(group -> new Group(label(group.get(0)),
            String.join(" ", group.stream().map(QuestionView::id).toList()), ticks(group))).toList();
    }

    /** Whether all rows stand under labels, so that the list needs no words of its own above them. */
    public boolean headed() {
        return questions.stream().noneMatch(q -> label(q).isEmpty());
    }

    private String label(QuestionView q) {
        return groups.getOrDefault(q.id(), "");
    }

    /** Each group has a "don't know" of its own: who is not sure of one thing may be sure of the rest. */
    private List<Tick> ticks(List<QuestionView> group) {
        QuestionView head = group.get(0);
        Stream<Tick> unsure = head.unsaid().stream().filter(slip -> slip.code().equals(Question.DONT_KNOW))
            .map(slip -> new Tick(head.id(), "", slip.code(), slip.label(), slip.chosen()));
        return Stream.concat(group.stream().flatMap(q -> ticks(q).stream()), unsure).toList();
    }

    private List<Tick> ticks(QuestionView q) {
        List<Slip> rows = q.rows();
        return rows.stream().map(row -> new Tick(q.id(), q != first() && row == rows.get(0) ? q.id() : "", row.code(),
            row.label(), row.chosen())).toList();
    }

    /** The rows that speak for the whole list: none of these, rather not say. */
    public List<Slip> whole() {
        QuestionView first = first();
        Stream<Slip> none = first.slips().stream().filter(s -> s.code().equals(TickList.no(first.question())))
            .map(s -> new Slip(Question.NONE, s.label(), saysNone()));
        Stream<Slip> unsaid = first.unsaid().stream().filter(s -> s.code().equals(Question.RATHER_NOT_SAY))
            .map(s -> new Slip(s.code(), s.label(), s.chosen()));
        return Stream.concat(none, unsaid).toList();
    }

    /** No to everything but what is not known. */
    private boolean saysNone() {
        return questions.stream().anyMatch(QuestionView::saysNo)
            && questions.stream().allMatch(q -> q.saysNo() || q.unsureSaid());
    }

    public String wholeName() {
        return TickList.WHOLE;
    }

    public String mistake() {
        return questions.stream().map(q -> q.mistake("")).filter(m -> !m.isEmpty()).findFirst().orElse("");
    }

    /** A list left blank is one thing to mend. */
    List<Mistake> mistakes() {
        return list() && !mistake().isEmpty() ? List.of(new Mistake(first().id(), mistake()))
            : questions.stream().flatMap(q -> q.mistakes().entrySet().stream())
                .map(e -> new Mistake(e.getKey(), e.getValue())).toList();
    }
}
