package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.questionnaire.SaidDate.Hemisphere;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LatelyAgo;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.Span;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The days that a date as people say it may mean")
class SaidDateTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    private static Span in(SaidDate date, Hemisphere half) {
        return date.span(TODAY, half);
    }

    private static Span span(String from, String to) {
        return new Span(LocalDate.parse(from), LocalDate.parse(to));
    }

    @ParameterizedTest
    @CsvSource({ "SPRING, NORTH, 2024-03-01, 2024-05-31", "SUMMER, NORTH, 2024-06-01, 2024-08-31",
        "AUTUMN, NORTH, 2024-09-01, 2024-11-30", "SPRING, SOUTH, 2024-09-01, 2024-11-30",
        "WINTER, SOUTH, 2024-06-01, 2024-08-31", "AUTUMN, SOUTH, 2024-03-01, 2024-05-31" })
    void aSeasonIsItsThreeMonthsOnItsHalfOfTheEarth(Season season, Hemisphere half, String from, String to) {
        assertThat(in(new InSeason(season, Year.of(2024)), half)).isEqualTo(span(from, to));
    }

    @Test
    void aSeasonOverNewYearMeansEitherOfTheTwoThatTouchTheYear() {
        assertThat(in(new InSeason(Season.WINTER, Year.of(2024)), Hemisphere.NORTH))
            .isEqualTo(span("2024-01-01", "2025-02-28"));
        assertThat(in(new InSeason(Season.SUMMER, Year.of(2024)), Hemisphere.SOUTH))
            .isEqualTo(span("2024-01-01", "2025-02-28"));
    }

    @Test
    void aDayAMonthAndAYearAreThemselvesAndNeverLaterThanToday() {
        assertThat(in(new OnDay(LocalDate.of(2024, 2, 3)), Hemisphere.NORTH))
            .isEqualTo(span("2024-02-03", "2024-02-03"));
        assertThat(in(new InMonth(YearMonth.of(2024, 2)), Hemisphere.NORTH))
            .isEqualTo(span("2024-02-01", "2024-02-29"));
        assertThat(in(new InYear(Year.of(2026)), Hemisphere.NORTH)).isEqualTo(span("2026-01-01", "2026-06-10"));
        assertThat(in(new OnDay(TODAY.plusDays(1)), Hemisphere.NORTH)).isEqualTo(span("2026-06-10", "2026-06-10"));
    }

    @Test
    void weeksAndMonthsAgoAreCountedBackFromToday() {
        assertThat(in(new LatelyAgo(3, 6, LatelyAgo.Unit.MONTHS), Hemisphere.NORTH))
            .isEqualTo(span("2025-12-10", "2026-03-10"));
        assertThat(in(new LatelyAgo(0, 2, LatelyAgo.Unit.WEEKS), Hemisphere.SOUTH))
            .isEqualTo(span("2026-05-27", "2026-06-10"));
        assertThatThrownBy(() -> new LatelyAgo(3, 2, LatelyAgo.Unit.WEEKS))
            .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void yearsAgoAreCountedBackFromTodayAndLongerAgoAsFarAsHairReaches() {
        assertThat(in(new YearsAgo(2, 3), Hemisphere.NORTH)).isEqualTo(span("2023-06-10", "2024-06-10"));
        assertThat(in(new LongerThan(5), Hemisphere.NORTH)).isEqualTo(span("1991-06-10", "2021-06-10"));
        assertThat(in(new NotKnown(), Hemisphere.NORTH)).isEqualTo(span("1991-06-10", "2026-06-10"));
    }

    @Test
    void aSpanRunsForwards() {
        assertThatCode(() -> new YearsAgo(0, 0)).doesNotThrowAnyException();
        assertThatThrownBy(() -> new YearsAgo(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new YearsAgo(2, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> span("2024-02-03", "2024-02-02")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aDateLiesWholeInTheFutureFromTheDayAfterTodayOn() {
        Map.of(new OnDay(TODAY), new OnDay(TODAY.plusDays(1)), new InMonth(YearMonth.of(2026, 6)),
            new InMonth(YearMonth.of(2026, 7)), new InYear(Year.of(2026)), new InYear(Year.of(2027)),
            new InSeason(Season.WINTER, Year.of(2026)), new InSeason(Season.SPRING, Year.of(2027)))
            .forEach((now, later) -> {
                assertThat(now.wholeInFuture(TODAY)).as("%s", now).isFalse();
                assertThat(later.wholeInFuture(TODAY)).as("%s", later).isTrue();
            });
        assertThat(new YearsAgo(0, 1).wholeInFuture(TODAY)).isFalse();
        assertThat(new NotKnown().wholeInFuture(TODAY)).isFalse();
    }

    @Test
    void oneDateIsSurelyAfterAnotherOnlyWhereNoDayOfBothIsTheSame() {
        var march = new InMonth(YearMonth.of(2025, 3));
        assertThat(new InMonth(YearMonth.of(2025, 4)).surelyAfter(march, TODAY)).isTrue();
        assertThat(march.surelyAfter(march, TODAY)).isFalse();
        assertThat(new OnDay(LocalDate.of(2025, 3, 31)).surelyAfter(march, TODAY)).isFalse();
        assertThat(new InSeason(Season.SUMMER, Year.of(2025)).surelyAfter(march, TODAY))
            .as("in the south it may have been January").isFalse();
    }
}
