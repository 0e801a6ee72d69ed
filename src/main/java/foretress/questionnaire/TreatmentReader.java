package foretress.questionnaire;

import foretress.questionnaire.Answer.Treatments;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reads treatments as a client is asked for them: first a list to tick, then a page about each thing ticked.
 *
 * <p>{@code .tick} holds the rows ticked where {@code .ticks} says that the list stood on the page; {@code .of} is the index from 0
 * of the treatment that a page was about. What was ticked and not yet told of is a treatment of which nothing is known.
 */
final class TreatmentReader {
    private final AnswerForm form;
    private final Question question;
    private final List<SaidTreatment> before;

    TreatmentReader(AnswerForm form, Question question, Optional<Answer> earlier) {
        this.form = form;
        this.question = question;
        this.before =
            earlier.map(a -> a instanceof Treatments t ? t.list() : List.<SaidTreatment>of()).orElse(List.of());
    }

    boolean ticks() {
        return !form.blank(question.id() + ".ticks");
    }

    boolean about() {
        return !form.blank(question.id() + ".of");
    }

    /** The list as it was ticked. */
    Optional<Answer> ticked() {
        Set<String> rows = new LinkedHashSet<>(form.all(question.id() + ".tick"));
        List<String> whole = form.all(question.id());
        Optional<String> strange = rows.stream().filter(row -> row(row).isEmpty()).findFirst()
            .or(() -> whole.stream().filter(code -> !speaksForAll(code)).findFirst());
        if (strange.isPresent()) {
            return form.wrong(question.id(), "not-offered", strange.get());
        }
        if (!whole.isEmpty()) {
            return rows.isEmpty() && whole.size() == 1 ? Optional.of(all(whole.get(0)))
                : form.wrong(question.id(), "none-and-others", whole.get(0));
        }
        return rows.isEmpty() ? form.wrong(question.id(), "required") : Optional.of(list(rows));
    }

    private Optional<Question.Row> row(String head) {
        return question.rows().stream().filter(row -> row.head().equals(head)).findFirst();
    }

    private boolean speaksForAll(String code) {
        return code.equals(Question.NONE) || question.unsure() && code.equals(Question.DONT_KNOW);
    }

    private static Answer all(String code) {
        return code.equals(Question.NONE) ? new Treatments(List.of()) : Answer.DONT_KNOW;
    }

    /** What was told of before stays as long as its row is ticked. */
    private Answer list(Set<String> rows) {
        List<SaidTreatment> list = new ArrayList<>();
        for (Question.Row row : question.rows()) {
            if (rows.contains(row.head())) {
                List<SaidTreatment> told = before.stream().filter(t -> row.kinds().contains(t.what())).toList();
                list.addAll(told.isEmpty() ? List.of(SaidTreatment.ticked(row.head())) : told);
            }
        }
        return new Treatments(list);
    }

    /** The list with what a page told of one of its treatments. */
    Optional<Answer> told(ListReader<SaidTreatment> page) {
        OptionalInt at = form.one(question.id() + ".of").map(Digits::whole).orElse(OptionalInt.empty());
        if (at.isEmpty() || at.getAsInt() >= before.size()) {
            return form.wrong(question.id() + ".of", "not-offered", form.all(question.id() + ".of").get(0));
        }
        return page.oneEntry().map(told -> replaced(at.getAsInt(), told));
    }

    private Answer replaced(int at, SaidTreatment told) {
        return new Treatments(Stream.concat(Stream.concat(before.subList(0, at).stream(), Stream.of(told)),
            before.subList(at + 1, before.size()).stream()).toList());
    }

    /** The kind that the page is about, where its row leaves no choice. */
    static Optional<String> onlyKind(AnswerForm form, Question question, Optional<Answer> earlier) {
        OptionalInt at =
            form.all(question.id() + ".of").stream().findFirst().map(Digits::whole).orElse(OptionalInt.empty());
        return earlier.filter(Treatments.class::isInstance).map(a -> ((Treatments) a).list())
            .filter(list -> at.isPresent() && at.getAsInt() < list.size()).map(list -> list.get(at.getAsInt()).what())
            .filter(what -> question.row(what).filter(row -> row.kinds().size() > 1).isEmpty());
    }
}
