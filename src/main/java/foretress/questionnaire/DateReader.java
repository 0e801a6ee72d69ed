package foretress.questionnaire;

import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.LatelyAgo.Unit;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Reads a date as precise as it is said, from the fields {@code .precision}, {@code .day}, {@code .month}, {@code .season},
 * {@code .year} and {@code .ago} under one name. Fields that the chosen precision does not need are left alone: without a
 * script they all stand on the page.
 */
final class DateReader {
    static final int FIRST_YEAR = 1900;
    static final List<String> PRECISIONS =
        List.of("day", "month", "season", "year", "years-ago", "longer", Question.DONT_KNOW);
    static final Map<String, SaidDate> AGO = ago();
    private static final List<String> SEASONS = List.of("spring", "summer", "autumn", "winter");

    private static Map<String, SaidDate> ago() {
        Map<String, SaidDate> ago = new LinkedHashMap<>();
        Stream.of(new LatelyAgo(0, 2, Unit.WEEKS), new LatelyAgo(2, 4, Unit.WEEKS), new LatelyAgo(1, 2, Unit.MONTHS),
            new LatelyAgo(2, 3, Unit.MONTHS), new LatelyAgo(3, 6, Unit.MONTHS), new LatelyAgo(6, 12, Unit.MONTHS))
            .forEach(date -> ago.put(date.code(), date));
        Stream.of(new YearsAgo(0, 1), new YearsAgo(1, 2), new YearsAgo(2, 3), new YearsAgo(3, 5))
            .forEach(date -> ago.put(date.from() + "-" + date.to(), date));
        ago.put("5-plus", new LongerThan(5));
        return Collections.unmodifiableMap(ago);
    }

    private final AnswerForm form;
    private final String name;
    private final LocalDate today;

    DateReader(AnswerForm form, String name, LocalDate today) {
        this.form = form;
        this.name = name;
        this.today = today;
    }

    LocalDate today() {
        return today;
    }

    boolean blank() {
        return form.blank(name + ".precision", name + ".day", name + ".month", name + ".season", name + ".year",
            name + ".ago");
    }

    /** The date; none when nothing is said, and none with a mistake when it cannot be. */
    Optional<SaidDate> read() {
        Optional<String> precision = form.code(name + ".precision", PRECISIONS);
        boolean refused = precision.isEmpty() && !form.blank(name + ".precision");
        return refused ? Optional.empty() : precision.or(this::asFilledIn).flatMap(this::read);
    }

    /** Somebody who fills in a month and a year has said how precise they are. */
    private Optional<String> asFilledIn() {
        boolean noYear = form.blank(name + ".year");
        return List.of("day", "month", "season", "year").stream()
            .filter(p -> !form.blank(name + "." + p)).findFirst()
            .or(() -> noYear && !form.blank(name + ".ago") ? Optional.of("years-ago") : Optional.empty());
    }

    private Optional<SaidDate> read(String precision) {
        return switch (precision) {
            case "day" -> year().flatMap(year -> month(year).flatMap(this::day));
            case "month" -> year().flatMap(this::month).flatMap(this::dayIfKnown);
            case "season" -> season().flatMap(season -> year().map(year -> new InSeason(season, year)));
            case "year" -> year().map(InYear::new);
            case "years-ago" ->
                present(name + ".ago", form.code(name + ".ago", AGO.keySet()), "ago-missing").map(AGO::get);
            case "longer" -> Optional.of(new LongerThan(5));
            default -> Optional.of(new NotKnown());
        };
    }

    private Optional<Year> year() {
        String field = name + ".year";
        Optional<String> typed = present(field, form.one(field), "year-missing");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt year = Digits.whole(typed.get());
        // Two digits could mean two centuries; nobody is asked to guess which we took.
        if (year.isEmpty() || year.getAsInt() < 1000) {
            return form.wrong(field, "not-a-year", typed.get());
        }
        return within(field, year.getAsInt());
    }

    private Optional<Year> within(String field, int year) {
        if (year > today.getYear()) {
            return form.wrong(field, "year-in-future", year + "", today.getYear() + "");
        }
        return year < FIRST_YEAR ? form.wrong(field, "year-too-early", year + "", FIRST_YEAR + "")
            : Optional.of(Year.of(year));
    }

    private Optional<YearMonth> month(Year year) {
        String field = name + ".month";
        Optional<String> typed = present(field, form.one(field), "month-missing");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt month = Digits.whole(typed.get());
        if (month.isEmpty() || month.getAsInt() < 1 || month.getAsInt() > 12) {
            return form.wrong(field, "not-a-month", typed.get());
        }
        YearMonth said = year.atMonth(month.getAsInt());
        return said.atDay(1).isAfter(today) ? form.wrong(field, "month-in-future", said.getMonthValue() + "", year + "")
            : Optional.of(said);
    }

    /** Whoever knows the month may know the day too. */
    private Optional<SaidDate> dayIfKnown(YearMonth month) {
        return form.blank(name + ".day") ? Optional.of(new InMonth(month)) : day(month);
    }

    private Optional<SaidDate> day(YearMonth month) {
        String field = name + ".day";
        Optional<String> typed = present(field, form.one(field), "day-missing");
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        OptionalInt day = Digits.whole(typed.get());
        if (day.isEmpty() || !month.isValidDay(day.getAsInt())) {
            return form.wrong(field, "not-a-day", typed.get(), month.getMonthValue() + "", month.getYear() + "");
        }
        LocalDate said = month.atDay(day.getAsInt());
        return said.isAfter(today)
            ? form.wrong(field, "day-in-future", said.getDayOfMonth() + "", said.getMonthValue() + "",
                said.getYear() + "")
            : Optional.of(new OnDay(said));
    }

    private Optional<Season> season() {
        return present(name + ".season", form.code(name + ".season", SEASONS), "season-missing")
            .map(code -> Season.valueOf(code.toUpperCase(Locale.ROOT)));
    }

    /** A field the chosen precision needs: blank is a mistake of its own, unless one was noted already. */
    private <T> Optional<T> present(String field, Optional<T> said, String missing) {
        return said.isPresent() || !form.blank(field) ? said : form.wrong(field, missing);
    }
}
