package foretress.intake;

import foretress.intake.QuestionView.Slip;
import foretress.questionnaire.Question;
import foretress.questionnaire.TickList;
import foretress.web.Mistake;
import java.util.List;
import java.util.stream.Stream;

/**
 * What stands together on a client's page: one question, or several as one list to tick.
 *
 * @param ask the list's own question; empty over a question that stands by itself
 * @param alone nothing else is on the page, so that its words are the heading
 */
public record Block(String ask, List<QuestionView> questions, boolean alone) {
    /** One thing to tick: the question it answers, and where a link to that question lands. */
    public record Tick(String name, String anchor, String code, String label, boolean chosen) {}

    public boolean list() {
        return !ask.isEmpty();
    }

    public QuestionView first() {
        return questions.get(0);
    }

    /** Names the questions of the list for {@link TickList}. */
    public String ids() {
        return String.join(" ", questions.stream().map(QuestionView::id).toList());
    }

    public List<Tick> ticks() {
        return questions.stream().flatMap(this::ticks).toList();
    }

    private Stream<Tick> ticks(QuestionView q) {
        List<Slip> rows = q.rows();
        return rows.stream().map(row -> new Tick(q.id(), q != first() && row == rows.get(0) ? q.id() : "", row.code(),
            row.label(), row.chosen()));
    }

    /** The rows that speak for the whole list: none of these, don't know, rather not say. */
    public List<Slip> whole() {
        QuestionView first = first();
        Stream<Slip> none = first.slips().stream().filter(s -> s.code().equals(TickList.no(first.question())))
            .map(s -> new Slip(Question.NONE, s.label(), questions.stream().allMatch(QuestionView::saysNo)));
        Stream<Slip> unsaid = first.unsaid().stream().map(s -> new Slip(s.code(), s.label(), s.chosen()));
        return Stream.concat(none, unsaid).toList();
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
