package foretress.questionnaire;

import foretress.questionnaire.Answer.Medicines;
import foretress.questionnaire.Answer.Treatments;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads a list the client builds page by page. The list itself never travels: the page sends new entries, or the index of one
 * to drop, and what was there before comes from the earlier answer.
 *
 * <p>{@code .act} is add, done, or none; {@code .drop} an index from 0. An entry filled in when "done" is pressed is taken
 * in. A list never becomes empty by itself: only "none" says that there is nothing, since an empty list reads as a no.
 */
final class ListReader<T> {
    static final int MOST_ENTRIES = 40;
    static final int LONGEST_NAME = 200;

    private final AnswerForm form;
    private final Question question;
    private final List<T> before;
    private final String firstField;
    private final List<Entry<T>> entries;
    private final Function<List<T>, Answer> answer;
    private boolean adding;

    /** Room for one new entry on the page. */
    private record Entry<T>(Supplier<Boolean> blank, Supplier<Optional<T>> told) {}

    private ListReader(AnswerForm form, Question question, List<T> before, String firstField,
        List<Entry<T>> entries, Function<List<T>, Answer> answer) {
        this.form = form;
        this.question = question;
        this.before = before;
        this.firstField = firstField;
        this.entries = entries;
        this.answer = answer;
    }

    static ListReader<SaidTreatment> treatments(AnswerForm form, Question question, Optional<Answer> earlier,
        LocalDate today) {
        String name = question.id();
        var when = new DateReader(form, name + ".when", today);
        var since = new DateReader(form, name + ".since", today);
        return new ListReader<>(form, question,
            earlier.map(a -> a instanceof Treatments t ? t.list() : List.<SaidTreatment>of()).orElse(List.of()),
            name + ".what",
            List.of(new Entry<>(() -> when.blank() && since.blank()
                && form.blank(name + ".what", name + ".zone", name + ".extent", name + ".by", name + ".often",
                    name + ".every"),
                () -> treatment(form, question, when, since, TreatmentReader.onlyKind(form, question, earlier)))),
            Treatments::new);
    }

    static ListReader<Medicine> medicines(AnswerForm form, Question question, Optional<Answer> earlier) {
        String name = question.id();
        // The bands alone are no entry: a page may send them with something chosen from the start.
        return new ListReader<>(form, question,
            earlier.map(a -> a instanceof Medicines m ? m.list() : List.<Medicine>of()).orElse(List.of()),
            name + ".name",
            Medicine.ROWS.stream().map(row -> row.isEmpty() ? name : name + "." + row).map(row -> medicines(form, row))
                .toList(),
            Medicines::new);
    }

    private static Entry<Medicine> medicines(AnswerForm form, String row) {
        return new Entry<>(() -> form.blank(row + ".name"), () -> medicine(form, row));
    }

    private static Optional<SaidTreatment> treatment(AnswerForm form, Question question, DateReader reader,
        DateReader first, Optional<String> known) {
        String name = question.id();
        Optional<String> what =
            known.or(() -> needed(form, name + ".what", form.code(name + ".what", question.options())));
        Optional<SaidDate> when = reader.blank() ? form.wrong(name + ".when.precision", "required") : reader.read();
        Optional<String> zone = needed(form, name + ".zone", form.code(name + ".zone", SaidTreatment.ZONES));
        Optional<String> by = orElse(form, name + ".by", SaidTreatment.BY,
            known.flatMap(question::row).flatMap(Question.Row::by).orElse(SaidTreatment.DONT_KNOW));
        Optional<String> often = orElse(form, name + ".often", SaidTreatment.OFTEN, SaidTreatment.DONT_KNOW);
        Optional<String> extent = orElse(form, name + ".extent", SaidTreatment.EXTENTS, SaidTreatment.DONT_KNOW);
        boolean whole = what.isPresent() && when.isPresent() && zone.isPresent() && by.isPresent() && often.isPresent();
        return whole && extent.isPresent()
            ? repeated(form, name, new SaidTreatment(what.get(), when.get(), zone.get(), by.get(), often.get())
                .reaching(SaidTreatment.MEASURED.contains(zone.get()) ? extent.get() : SaidTreatment.DONT_KNOW), first)
            : Optional.empty();
    }

    /** How far apart and since when, where it was done more than once. Without a script both stand on the page in any case. */
    private static Optional<SaidTreatment> repeated(AnswerForm form, String name, SaidTreatment last,
        DateReader first) {
        if (!last.repeated()) {
            return Optional.of(last);
        }
        Optional<String> every = orElse(form, name + ".every", SaidTreatment.EVERY, SaidTreatment.DONT_KNOW);
        Optional<SaidDate> since = first.blank() ? Optional.of(new SaidDate.NotKnown()) : first.read();
        if (since.isPresent() && since.get().surelyAfter(last.when(), first.today())) {
            return form.wrong(name + ".since.precision", "first-after-last");
        }
        return every.flatMap(apart -> since.map(
            from -> new SaidTreatment(last.what(), last.when(), last.zone(), last.by(), last.often(), apart, from,
                last.extent())));
    }

    private static Optional<Medicine> medicine(AnswerForm form, String name) {
        Optional<String> typed = form.words(name + ".name", LONGEST_NAME).map(words -> words.replaceAll("\\s+", " "));
        Optional<String> dose = orElse(form, name + ".dose", Medicine.DOSES, Medicine.NOT_ASKED);
        Optional<String> route = orElse(form, name + ".route", Medicine.ROUTES, Medicine.NOT_ASKED);
        Optional<String> last = orElse(form, name + ".last", Medicine.LAST_TAKEN, Medicine.NOT_ASKED);
        boolean whole = typed.isPresent() && dose.isPresent() && route.isPresent() && last.isPresent();
        return whole ? Optional.of(new Medicine(typed.get(), dose.get(), route.get(), last.get())) : Optional.empty();
    }

    private static Optional<String> needed(AnswerForm form, String field, Optional<String> said) {
        return said.isPresent() || !form.blank(field) ? said : form.wrong(field, "required");
    }

    private static Optional<String> orElse(AnswerForm form, String field, List<String> offered, String blank) {
        Optional<String> said = form.code(field, offered);
        return said.isPresent() || !form.blank(field) ? said : Optional.of(blank);
    }

    /** The entry of a page that is about one thing; a mistake is noted for each part that is missing. */
    Optional<T> oneEntry() {
        return entries.get(0).told().get();
    }

    /** Whether an entry was added or dropped, so that the list is shown again. */
    boolean adding() {
        return adding;
    }

    /** Whether there is neither an entry on the list nor a new one on the page. */
    boolean nothingListed() {
        return before.isEmpty() && blank();
    }

    private List<Entry<T>> told() {
        return entries.stream().filter(entry -> !entry.blank().get()).toList();
    }

    private boolean blank() {
        return told().isEmpty();
    }

    Optional<Answer> read() {
        int mistakes = form.mistakesSoFar();
        Optional<List<T>> list = form.blank(question.id() + ".drop") ? acted() : dropped();
        // A mistake in the new entry takes nothing from the list.
        List<T> kept = form.mistakesSoFar() > mistakes ? before : list.orElse(before);
        return list.isPresent() && list.get().isEmpty() && saysNone() || !kept.isEmpty()
            ? Optional.of(answer.apply(kept)) : Optional.empty();
    }

    private Optional<List<T>> acted() {
        Optional<String> act = form.code(question.id() + ".act", List.of("add", "done", Question.NONE));
        if (act.isEmpty() && !form.blank(question.id() + ".act")) {
            return Optional.empty();
        }
        adding = act.equals(Optional.of("add"));
        if (saysNone()) {
            return nothingListed() ? Optional.of(List.of())
                : form.wrong(question.id(), "none-and-others", Question.NONE);
        }
        return !adding && blank() ? Optional.of(before) : added();
    }

    private boolean saysNone() {
        return form.all(question.id()).contains(Question.NONE)
            || form.all(question.id() + ".act").contains(Question.NONE);
    }

    private Optional<List<T>> added() {
        if (blank()) {
            return form.wrong(firstField, "required");
        }
        List<Entry<T>> told = told();
        if (before.size() + told.size() > MOST_ENTRIES) {
            return form.wrong(firstField, "too-many", MOST_ENTRIES + "");
        }
        List<T> more = new ArrayList<>(before);
        told.forEach(entry -> entry.told().get().ifPresent(more::add));
        return more.size() == before.size() + told.size() ? Optional.of(more) : Optional.empty();
    }

    private Optional<List<T>> dropped() {
        String field = question.id() + ".drop";
        adding = true;
        Optional<String> typed = form.one(field);
        OptionalInt index = typed.map(Digits::whole).orElse(OptionalInt.empty());
        if (index.isEmpty() || index.getAsInt() >= before.size()) {
            return typed.isEmpty() ? Optional.empty() : form.wrong(field, "not-offered", typed.get());
        }
        List<T> fewer = new ArrayList<>(before);
        fewer.remove(index.getAsInt());
        return Optional.of(fewer);
    }
}
