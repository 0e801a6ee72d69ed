package foretress.questionnaire;

import static foretress.questionnaire.Posted.TODAY;
import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.optional;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Said;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DateReaderTest {
    private final Question when = question("when", Kind.SAID_DATE);

    private FormReading date(String... fieldsAndValues) {
        return read(when,
            Stream.of(fieldsAndValues).map(s -> s.startsWith(".") ? "when" + s : s).toArray(String[]::new));
    }

    @Test
    void everyPrecisionIsRead() {
        assertSays(date(".precision", "day", ".day", "15", ".month", "3", ".year", "2026"), new Said(new OnDay(TODAY)));
        assertSays(date(".precision", "month", ".month", "3", ".year", "2026"),
            new Said(new InMonth(YearMonth.of(2026, 3))));
        assertSays(date(".precision", "season", ".season", "summer", ".year", "2024"),
            new Said(new InSeason(Season.SUMMER, Year.of(2024))));
        assertSays(date(".precision", "year", ".year", "1900"), new Said(new InYear(Year.of(1900))));
        assertSays(date(".precision", "longer"), new Said(new LongerThan(5)));
        assertSays(date(".precision", "dont-know"), Answer.DONT_KNOW);
        assertSays(date(".precision", "rather-not-say"), Answer.RATHER_NOT_SAY);
    }

    @ParameterizedTest
    @CsvSource({ "0-1, 0, 1", "1-2, 1, 2", "2-3, 2, 3", "3-5, 3, 5" })
    void yearsAgoAreBands(String code, int from, int to) {
        assertSays(date(".precision", "years-ago", ".ago", code), new Said(new YearsAgo(from, to)));
    }

    @ParameterizedTest
    @DisplayName("The strand map: stopped five months ago, or three weeks ago, is said as it is known")
    @CsvSource({ "0-2-weeks, 0, 2, WEEKS", "2-4-weeks, 2, 4, WEEKS", "1-2-months, 1, 2, MONTHS",
        "2-3-months, 2, 3, MONTHS", "3-6-months, 3, 6, MONTHS", "6-12-months, 6, 12, MONTHS" })
    void whatIsNotLongAgoIsSaidInWeeksOrMonths(String code, int from, int to, LatelyAgo.Unit unit) {
        assertSays(date(".precision", "years-ago", ".ago", code), new Said(new LatelyAgo(from, to, unit)));
    }

    @Test
    void theLastBandIsOpen() {
        assertSays(date(".precision", "years-ago", ".ago", "5-plus"), new Said(new LongerThan(5)));
    }

    @Test
    void whatIsFilledInTellsThePrecisionWhenNoneIsChosen() {
        assertSays(date(".month", "3", ".year", "2024"), new Said(new InMonth(YearMonth.of(2024, 3))));
        assertSays(date(".day", "29", ".month", "2", ".year", "2024"), new Said(new OnDay(LocalDate.of(2024, 2, 29))));
        assertSays(date(".season", "winter", ".year", "2024"), new Said(new InSeason(Season.WINTER, Year.of(2024))));
        assertSays(date(".year", "2024"), new Said(new InYear(Year.of(2024))));
        assertSays(date(".ago", "2-3"), new Said(new YearsAgo(2, 3)));
    }

    @Test
    void fieldsThePrecisionDoesNotNeedAreLeftAlone() {
        assertSays(date(".precision", "year", ".year", "2024", ".month", "nonsense", ".day", "99"),
            new Said(new InYear(Year.of(2024))));
        assertSays(date(".precision", "dont-know", ".year", "2062"), Answer.DONT_KNOW);
    }

    @Test
    void nothingSaidSendsTheReaderToTheFirstField() {
        assertRefuses(date(), "when.precision", "required");
        assertRefuses(date(".precision", "", ".year", " "), "when.precision", "required");
    }

    @ParameterizedTest
    @CsvSource({
        "day,    day-missing,    .day",
        "month,  month-missing,  .month",
    })
    void aPartThatIsMissingIsNamed(String precision, String code, String field) {
        assertRefuses(date(".precision", precision, ".year", "2024", precision.equals("day") ? ".month" : ".x", "3"),
            "when" + field, code);
    }

    @Test
    void aMissingYearSeasonOrBandIsNamed() {
        assertRefuses(date(".precision", "month", ".month", "3"), "when.year", "year-missing");
        assertRefuses(date(".precision", "year"), "when.year", "year-missing");
        assertRefuses(date(".precision", "season", ".year", "2024"), "when.season", "season-missing");
        assertRefuses(date(".precision", "years-ago"), "when.ago", "ago-missing");
    }

    @ParameterizedTest
    @ValueSource(
        strings = { "24", "0024", "year", "-2024", "2024.5", "20 24", "1e3", "２０２x", "9999999", "MMXXIV", "½", "²" })
    void whatIsNoYearIsRefused(String typed) {
        assertRefuses(date(".precision", "year", ".year", typed), "when.year", "not-a-year", typed);
    }

    @ParameterizedTest
    @CsvSource({ "2027, year-in-future, 2026", "2062, year-in-future, 2026", "999999, year-in-future, 2026",
        "1899, year-too-early, 1900" })
    void aYearOutsideTheBordersNamesBoth(String typed, String code, String border) {
        assertRefuses(date(".precision", "year", ".year", typed), "when.year", code, typed, border);
    }

    @Test
    void theBordersThemselvesAreIn() {
        assertThat(date(".precision", "year", ".year", "1900").clean()).isTrue();
        assertThat(date(".precision", "year", ".year", "2026").clean()).isTrue();
        assertThat(date(".precision", "month", ".year", "2026", ".month", "3").clean()).isTrue();
        assertThat(date(".precision", "day", ".year", "2026", ".month", "3", ".day", "15").clean()).isTrue();
    }

    @Test
    void tomorrowAndNextMonthHaveNotCome() {
        assertRefuses(date(".precision", "day", ".year", "2026", ".month", "3", ".day", "16"), "when.day",
            "day-in-future", "16", "3", "2026");
        assertRefuses(date(".precision", "month", ".year", "2026", ".month", "4"), "when.month", "month-in-future", "4",
            "2026");
        assertRefuses(date(".precision", "day", ".year", "2026", ".month", "4", ".day", "1"), "when.month",
            "month-in-future", "4", "2026");
    }

    @ParameterizedTest
    @CsvSource({ "31, 2, 2024", "30, 2, 2024", "29, 2, 2023", "29, 2, 1900", "31, 4, 2025", "0, 1, 2025",
        "32, 1, 2025" })
    void aDayThatNeverWasIsRefused(String day, String month, String year) {
        assertRefuses(date(".precision", "day", ".day", day, ".month", month, ".year", year), "when.day", "not-a-day",
            day, month, year);
    }

    @Test
    @DisplayName("29 February 2000 was a day: every fourth century keeps its leap year (ISO 8601)")
    void theLeapDayOfTheCenturyIsADay() {
        assertThat(date(".precision", "day", ".day", "29", ".month", "2", ".year", "2000").clean()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = { "0", "13", "March", "-1" })
    void whatIsNoMonthIsRefused(String month) {
        assertRefuses(date(".precision", "month", ".month", month, ".year", "2024"), "when.month", "not-a-month",
            month);
    }

    @Test
    void forgedCodesAreRefused() {
        assertRefuses(date(".precision", "century", ".year", "2024"), "when.precision", "not-offered", "century");
        assertRefuses(date(".precision", "season", ".season", "monsoon", ".year", "2024"), "when.season", "not-offered",
            "monsoon");
        assertRefuses(date(".precision", "years-ago", ".ago", "7-9"), "when.ago", "not-offered", "7-9");
    }

    @Test
    void doubledPartsAreRefused() {
        assertRefuses(date(".precision", "year", ".precision", "month", ".year", "2024"), "when.precision", "doubled");
        assertRefuses(date(".precision", "year", ".year", "2024", ".year", "2025"), "when.year", "doubled");
    }

    @Test
    void notSayingIsRefusedWhereItIsNotOffered() {
        Question plain = optional("when", Kind.SAID_DATE);
        assertRefuses(read(plain, "when.precision", "rather-not-say"), "when.precision", "not-offered",
            "rather-not-say");
        assertRefuses(read(plain, "when.precision", "dont-know"), "when.precision", "not-offered", "dont-know");
    }

    @Test
    @DisplayName("The strand map: whoever knows the month may say the day beside it")
    void theDayMayStandBesideTheMonth() {
        assertSays(date(".precision", "month", ".day", "5", ".month", "3", ".year", "2026"),
            new Said(new OnDay(LocalDate.of(2026, 3, 5))));
        assertSays(date(".precision", "month", ".day", " ", ".month", "3", ".year", "2026"),
            new Said(new InMonth(YearMonth.of(2026, 3))));
        assertRefuses(date(".precision", "month", ".day", "31", ".month", "2", ".year", "2026"), "when.day",
            "not-a-day", "31", "2", "2026");
        assertRefuses(date(".precision", "month", ".day", "16", ".month", "3", ".year", "2026"), "when.day",
            "day-in-future", "16", "3", "2026");
    }
}
