package foretress.note;

import foretress.bench.BenchNumber;
import foretress.hair.Growth;
import foretress.questionnaire.Answer;
import foretress.salon.ProductLine;
import foretress.salon.ProductLines;
import foretress.web.Form;
import foretress.web.Mistakes;
import jakarta.enterprise.context.RequestScoped;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;

/** Reads what was typed about one note; what cannot be is said field by field, with both values where two disagree. */
@RequestScoped
class NotedReading {
    private static final int LONGEST_NAME = 120;
    private static final int LONGEST_SHADE = 40;
    private static final int LONGEST_SAYS = 300;
    private static final List<String> WAYS = List.of("letter", "phone", "client");
    private static final int OLDEST_YEARS = 20;
    private static final int SHORTEST_WEEKS = 8;
    /** Own decision, in docs/why: the state of health that was asked about is that of now. */
    private static final int YES_MONTHS = 3;

    private final ProductLines lines;
    private final NotedSubjects subjects;
    private final NotedFacts facts;
    private final NoteWords say;

    NotedReading(ProductLines lines, NotedSubjects subjects, NotedFacts facts, NoteWords say) {
        this.lines = lines;
        this.subjects = subjects;
        this.facts = facts;
        this.say = say;
    }

    /** @return empty when there are mistakes */
    Optional<Object> read(NotedKind kind, Form form, LocalDate today, Mistakes mistakes) {
        Optional<?> read = switch (kind) {
            case LETTER -> letter(form, today, mistakes);
            case WORD -> word(form, today, mistakes);
            case CUT -> cut(form, today, mistakes);
            case GROWTH -> growth(form, today, mistakes);
        };
        return mistakes.isEmpty() ? Optional.of(read.orElseThrow()) : Optional.empty();
    }

    private Optional<NotedBody.Letter> letter(Form form, LocalDate today, Mistakes mistakes) {
        String outcome = form.one("outcome");
        boolean names = outcome.equals("names-product");
        mistakes.expect(names || outcome.equals("advises-against"), "outcome", say.letter_outcome_missing());
        Optional<ProductLine> line = line(form.one("line"));
        mistakes.expect(line.isPresent() || !names, "line", say.letter_line_missing());
        line.filter(l -> names)
            .ifPresent(l -> mistakes.expect(facts.mayBeOpened(l), "line", say.letter_cannot_open(l.name)));
        mistakes.expect(form.one("shade").length() <= LONGEST_SHADE, "shade", say.shade_long(LONGEST_SHADE));
        name(form, mistakes);
        Optional<LocalDate> written = day(form, "written", today, mistakes);
        return written.map(day -> new NotedBody.Letter(outcome, line.map(l -> l.id), line.map(l -> l.name).orElse(""),
            form.one("shade"), day, form.one("by")));
    }

    private Optional<ProductLine> line(String typed) {
        try {
            return typed.isEmpty() ? Optional.empty() : lines.line(UUID.fromString(typed));
        } catch (IllegalArgumentException noId) {
            return Optional.empty();
        }
    }

    private Optional<NotedBody.Word> word(Form form, LocalDate today, Mistakes mistakes) {
        String outcome = form.one("outcome");
        boolean doctor = form.one("who").equals("doctor");
        mistakes.expect(subjects.known(form.one("about")), "about", say.word_about_missing());
        mistakes.expect(outcome.equals("with-care") || outcome.equals("advised-against"), "outcome",
            say.word_outcome_missing());
        if (mistakes.expect(doctor || form.one("who").equals("pharmacist"), "who", say.word_who_missing())) {
            mistakes.expect(doctor || !outcome.equals("with-care"), "who", say.word_needs_doctor());
        }
        way(form, mistakes);
        name(form, mistakes);
        mistakes.expect(!form.one("says").isEmpty(), "says", say.word_says_missing());
        mistakes.expect(form.one("says").length() <= LONGEST_SAYS, "says", say.by_long(LONGEST_SAYS));
        Optional<LocalDate> said = day(form, "said", today, mistakes);
        Optional<LocalDate> until = parsed(form.one("until"));
        mistakes.expect(form.one("until").isEmpty() || until.isPresent(), "until", say.day_wrong());
        until.ifPresent(last -> mistakes.expect(!last.isBefore(today), "until", say.word_until_over()));
        said.filter(day -> outcome.equals("with-care") && day.isBefore(today.minusMonths(YES_MONTHS))
            && mistakes.at("said").isEmpty())
            .ifPresent(day -> mistakes.add("said", say.word_old(YES_MONTHS)));
        return said.map(day -> new NotedBody.Word(form.one("about"), outcome, doctor, form.one("by"), day,
            form.one("way"), form.one("says"), until));
    }

    /** What a client passes on closes a service, and opens none. */
    private void way(Form form, Mistakes mistakes) {
        String way = form.one("way");
        if (mistakes.expect(WAYS.contains(way), "way", say.word_way_missing())) {
            mistakes.expect(!way.equals("client") || !form.one("outcome").equals("with-care"), "way",
                say.word_way_client_opens_nothing());
        }
    }

    private void name(Form form, Mistakes mistakes) {
        mistakes.expect(!form.one("by").isEmpty(), "by", say.by_missing());
        mistakes.expect(form.one("by").length() <= LONGEST_NAME, "by", say.by_long(LONGEST_NAME));
    }

    private Optional<NotedBody.Cut> cut(Form form, LocalDate today, Mistakes mistakes) {
        Optional<LocalDate> day = day(form, "day", today, mistakes);
        OptionalDouble left = BenchNumber.read(form.one("left"));
        mistakes.expect(left.isPresent() && left.getAsDouble() <= Answer.Length.LONGEST_CM, "left",
            say.cut_left_wrong(form.one("left"), Answer.Length.LONGEST_CM));
        return day
            .flatMap(d -> left.isPresent() ? Optional.of(new NotedBody.Cut(d, left.getAsDouble())) : Optional.empty());
    }

    private Optional<NotedBody.Growth> growth(Form form, LocalDate today, Mistakes mistakes) {
        Optional<LocalDate> coloured = day(form, "coloured", today, mistakes);
        OptionalDouble cm = BenchNumber.read(form.one("cm"));
        mistakes.expect(cm.isPresent() && cm.getAsDouble() <= Answer.Length.LONGEST_CM, "cm",
            say.growth_cm_wrong(form.one("cm")));
        if (mistakes.isEmpty()) {
            possible(coloured.orElseThrow(), cm.getAsDouble(), today, mistakes);
        }
        return coloured.map(day -> new NotedBody.Growth(day, today, cm.orElse(0)));
    }

    /** Too early says nothing, and a rate no hair has is a slip of the ruler or of the date: neither may narrow anything. */
    private void possible(LocalDate coloured, double cm, LocalDate today, Mistakes mistakes) {
        long days = ChronoUnit.DAYS.between(coloured, today);
        if (mistakes.expect(days >= SHORTEST_WEEKS * 7, "coloured", say.growth_too_early(SHORTEST_WEEKS, days / 7))) {
            double rate = cm / (days / Growth.DAYS_A_MONTH);
            mistakes.expect(Growth.plausible(cm, coloured, today), "cm",
                say.growth_no_such_rate(form(cm), form(rate), form(Growth.SLOW), form(Growth.FAST)));
        }
    }

    private static String form(double value) {
        return BenchNumber.say(value);
    }

    private Optional<LocalDate> day(Form form, String field, LocalDate today, Mistakes mistakes) {
        Optional<LocalDate> day = parsed(form.one(field));
        if (mistakes.expect(day.isPresent(), field, say.day_wrong())
            && mistakes.expect(!day.orElseThrow().isAfter(today), field, say.day_to_come())) {
            mistakes.expect(day.orElseThrow().isAfter(today.minusYears(OLDEST_YEARS)), field,
                say.day_long_ago(OLDEST_YEARS));
        }
        return day;
    }

    private static Optional<LocalDate> parsed(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }
}
