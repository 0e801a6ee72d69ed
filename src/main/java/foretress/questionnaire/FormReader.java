package foretress.questionnaire;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Said;
import foretress.questionnaire.Answer.Text;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The one door of all client answers: a posted page becomes answers and mistakes. Nothing is preselected or assumed; a blank
 * is never a no. Only fields of the questions put are looked at, whatever else is sent.
 *
 * <table>
 * <caption>Fields of a question {@code id}</caption>
 * <tr><td>one of, several of</td><td>{@code id}</td></tr>
 * <tr><td>date</td><td>{@code id.precision .day .month .season .year .ago}, see {@link DateReader}</td></tr>
 * <tr><td>length</td><td>{@code id.cm .unit .straight}, see {@link LengthReader}</td></tr>
 * <tr><td>treatments</td><td>{@code id.what .when.* .zone .by .often .every .since.* .act .drop}, see {@link ListReader}; {@code .ticks .tick .of}, see
 * {@link TreatmentReader}</td></tr>
 * <tr><td>medicines</td><td>{@code id.name .dose .route .last .act .drop}, further ones as {@code id.2.name}: {@link Medicine#ROWS}</td></tr>
 * <tr><td>ingredients, note</td><td>{@code id}</td></tr>
 * <tr><td>all but free text</td><td>{@code id} = dont-know or rather-not-say where that is offered</td></tr>
 * </table>
 */
public final class FormReader {
    public static final int LONGEST_INGREDIENTS = 4000;
    public static final int LONGEST_NOTE = 1000;
    private static final List<String> WAYS_OF_NOT_SAYING = List.of(Question.DONT_KNOW, Question.RATHER_NOT_SAY);

    private final LocalDate today;

    /** @param today in the salon's zone; later dates are refused */
    public FormReader(LocalDate today) {
        this.today = today;
    }

    /**
     * Reads a page.
     *
     * @param put the questions on it
     * @param fields as posted; unknown ones are ignored
     * @param earlier what was said before; lists grow from it
     */
    public FormReading read(List<Question> put, Map<String, List<String>> fields, Answers earlier) {
        Map<String, List<String>> own = own(put, fields);
        var form = new AnswerForm(own);
        Map<String, Answer> answers = new LinkedHashMap<>();
        boolean adding = false;
        for (Question question : put) {
            Taken taken = take(question, form, earlier.to(question.id()));
            taken.answer().ifPresent(answer -> answers.put(question.id(), answer));
            adding |= taken.adding();
        }
        Set<String> ids = put.stream().map(Question::id).collect(Collectors.toSet());
        return new FormReading(new Answers(answers), form.mistakes(), own, ids, adding);
    }

    private record Taken(Optional<Answer> answer, boolean adding) {}

    private static Map<String, List<String>> own(List<Question> put, Map<String, List<String>> fields) {
        Map<String, List<String>> own = new LinkedHashMap<>(fields);
        own.keySet()
            .removeIf(field -> put.stream().noneMatch(q -> field.equals(q.id()) || field.startsWith(q.id() + ".")));
        return own;
    }

    private Taken take(Question question, AnswerForm form, Optional<Answer> earlier) {
        int before = form.mistakesSoFar();
        Taken taken = read(question, form, earlier);
        boolean unanswered = taken.answer().isEmpty() && form.mistakesSoFar() == before;
        if (unanswered && question.required() && !taken.adding()) {
            form.wrong(firstField(question), "required");
        }
        return taken;
    }

    /** Where the reader is sent when nothing was said. */
    private static String firstField(Question question) {
        return question.id() + switch (question.kind()) {
            case SAID_DATE -> ".precision";
            case HAIR_LENGTH -> ".cm";
            case TREATMENTS -> ".what";
            case MEDICINES -> ".name";
            default -> "";
        };
    }

    private Taken read(Question question, AnswerForm form, Optional<Answer> earlier) {
        return switch (question.kind()) {
            case ONE_OF -> just(oneOf(question, form));
            case SEVERAL_OF -> just(severalOf(question, form));
            case SAID_DATE -> just(saidDate(question, form));
            case HAIR_LENGTH -> {
                var length = new LengthReader(form, question.id());
                yield just(notSaying(question, form, length.blank()).orElseGet(length::read));
            }
            case TREATMENTS -> treatments(question, form, earlier);
            case MEDICINES -> list(question, form, ListReader.medicines(form, question, earlier));
            case INGREDIENTS -> just(form.words(question.id(), LONGEST_INGREDIENTS).map(Text::new));
            case NOTE -> just(form.words(question.id(), LONGEST_NOTE).map(Text::new));
        };
    }

    private Taken treatments(Question question, AnswerForm form, Optional<Answer> earlier) {
        var reader = new TreatmentReader(form, question, earlier);
        ListReader<SaidTreatment> list = ListReader.treatments(form, question, earlier, today);
        if (reader.ticks()) {
            return just(reader.ticked());
        }
        return reader.about() ? just(reader.told(list)) : list(question, form, list);
    }

    private static Taken just(Optional<Answer> answer) {
        return new Taken(answer, false);
    }

    private static Optional<Answer> oneOf(Question question, AnswerForm form) {
        Optional<String> said = form.one(question.id());
        if (said.isPresent() && !question.offers(said.get())) {
            return form.wrong(question.id(), "not-offered", said.get());
        }
        return said.map(FormReader::answer);
    }

    private static Answer answer(String code) {
        return switch (code) {
            case Question.DONT_KNOW -> Answer.DONT_KNOW;
            case Question.RATHER_NOT_SAY -> Answer.RATHER_NOT_SAY;
            default -> Chosen.of(code);
        };
    }

    private static Optional<Answer> severalOf(Question question, AnswerForm form) {
        Set<String> said = new LinkedHashSet<>(form.all(question.id()));
        Optional<String> strange = said.stream().filter(code -> !question.offers(code)).findFirst();
        if (strange.isPresent()) {
            return form.wrong(question.id(), "not-offered", strange.get());
        }
        Optional<String> alone = said.stream().filter(FormReader::standsAlone).findFirst();
        if (alone.isPresent() && said.size() > 1) {
            return form.wrong(question.id(), "none-and-others", alone.get());
        }
        if (alone.isPresent() || said.isEmpty()) {
            return alone.map(FormReader::answer);
        }
        return Optional.of(new Chosen(question.options().stream().filter(said::contains).toList()));
    }

    private static boolean standsAlone(String code) {
        return code.equals(Question.NONE) || WAYS_OF_NOT_SAYING.contains(code);
    }

    private Optional<Answer> saidDate(Question question, AnswerForm form) {
        var reader = new DateReader(form, question.id(), today);
        return notSaying(question, form, reader.blank())
            .or(() -> notSayingWhen(question, form))
            .orElseGet(() -> reader.read().map(Said::new));
    }

    /** The two ways of not saying, chosen in place of a precision. Dates typed before stay on the page and are left alone. */
    private static Optional<Optional<Answer>> notSayingWhen(Question question, AnswerForm form) {
        String field = question.id() + ".precision";
        Optional<String> unsaid = form.all(field).stream().filter(WAYS_OF_NOT_SAYING::contains).findFirst();
        if (unsaid.isPresent() && !question.offers(unsaid.get())) {
            return Optional.of(form.wrong(field, "not-offered", unsaid.get()));
        }
        return unsaid.map(code -> form.one(field).map(FormReader::answer));
    }

    private static Taken list(Question question, AnswerForm form, ListReader<?> reader) {
        if (form.all(question.id()).equals(List.of(Question.SOME))) {
            return new Taken(reader.read(), true); // what it is, is asked on the next page
        }
        boolean none = form.all(question.id()).equals(List.of(Question.NONE));
        Optional<Optional<Answer>> unsaid = none ? Optional.empty() : notSaying(question, form, reader.nothingListed());
        return unsaid.map(FormReader::just).orElseGet(() -> {
            Optional<Answer> answer = reader.read();
            return new Taken(answer, reader.adding());
        });
    }

    /**
     * "Don't know" or "rather not say" in the field that bears the question's own name; none when the question is answered in
     * its other fields. An inner none says that there was a mistake.
     */
    private static Optional<Optional<Answer>> notSaying(Question question, AnswerForm form, boolean restBlank) {
        if (form.blank(question.id())) {
            return Optional.empty();
        }
        List<String> offered = WAYS_OF_NOT_SAYING.stream().filter(question::offers).toList();
        Optional<String> code = form.code(question.id(), offered);
        if (code.isPresent() && !restBlank) {
            return Optional.of(form.wrong(question.id(), "none-and-others", code.get()));
        }
        return Optional.of(code.map(FormReader::answer));
    }
}
