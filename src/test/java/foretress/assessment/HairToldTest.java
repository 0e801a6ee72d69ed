package foretress.assessment;

import static foretress.assessment.Told.QUESTIONS;
import static foretress.assessment.Told.TODAY;
import static foretress.assessment.Told.TREATED;
import static foretress.assessment.Told.UK;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foretress.hair.Cut;
import foretress.hair.Growth;
import foretress.hair.HairHistory;
import foretress.hair.Range;
import foretress.hair.SafeSide;
import foretress.hair.Series;
import foretress.questionnaire.Answer;
import foretress.questionnaire.Answers;
import foretress.questionnaire.SaidDate;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.YearsAgo;
import foretress.questionnaire.SaidTreatment;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HairToldTest {
    private static final SaidDate LAST = new InMonth(YearMonth.of(2026, 3));

    private static Situation situation(SaidTreatment treatment) {
        Answers said = Answers.NONE.with("lotion", Answer.Chosen.of("no"))
            .with("treatments", new Answer.Treatments(List.of(treatment)))
            .with("length", new Answer.Length(40, true));
        return new Situation(TODAY, TODAY, Optional.empty(), Set.of("peroxide"), QUESTIONS, said, UK, List.of(),
            Optional.of(40));
    }

    private static HairHistory history(Situation situation) {
        return HairTold.of(situation, TREATED, Lexicon.KNOWS_NOTHING).history();
    }

    private static Optional<Series> series(String often, String every, SaidDate since) {
        return history(situation(new SaidTreatment("restorer", LAST, "regrowth", "home", often, every, since)))
            .treatments().get(0).series();
    }

    @Test
    void everySixWeeksForTwoToThreeYearsIsASeries() {
        Series series = series("regularly", "6-weeks", new YearsAgo(2, 3)).orElseThrow();
        assertThat(series.firstEarliest()).isEqualTo(TODAY.minusYears(3));
        assertThat(series.firstLatest()).isEqualTo(TODAY.minusYears(2));
        assertThat(series.monthsApart()).isCloseTo(7 * 7 / 30.4375, within(1e-9));
    }

    @Test
    void aFirstTimeNobodyKnowsIsNoSeriesAndStillRepeated() {
        assertThat(series("regularly", "6-weeks", new NotKnown())).isEmpty();
        assertThat(history(situation(new SaidTreatment("restorer", LAST, "regrowth", "home", "regularly"))).treatments()
            .get(0).repeated()).isTrue();
        assertThat(history(situation(new SaidTreatment("restorer", LAST, "regrowth", "home", "dont-know"))).treatments()
            .get(0).repeated()).isTrue();
        assertThat(series("once", "yearly", new YearsAgo(2, 3))).isEmpty();
    }

    /** Old records and other programs can say what the page refuses. */
    @Test
    void aFirstTimeAfterTheLastIsReadAsNotKnown() {
        assertThat(series("several", "yearly", new InMonth(YearMonth.of(2026, 5)))).isEmpty();
    }

    @Test
    void aFirstTimeEndsWithTheLast() {
        assertThat(series("several", "yearly", new InYear(Year.of(2026))).orElseThrow().firstLatest())
            .isEqualTo(LocalDate.of(2026, 3, 31));
    }

    @ParameterizedTest
    @CsvSource({ "weekly, 0.3", "4-weeks, 1.2", "6-weeks, 1.7", "8-weeks, 2.3", "12-weeks, 3.7", "4-months, 5",
        "6-months, 8", "few-a-year, 6",
        "yearly, 18", "dont-know, 18", "as-before, 18" })
    void howFarApartIsReadAsTheLongestItCanMean(String every, double months) {
        assertThat(series("regularly", every, new YearsAgo(2, 3)).orElseThrow().monthsApart()).isCloseTo(months,
            within(0.1));
    }

    @Test
    void cutsAndGrowthThatStaffRecordedReachTheMap() {
        List<Cut> cuts = List.of(new Cut(TODAY.minusYears(1), 12));
        Growth growth = Growth.measured(2.4, TODAY.minusDays(91), TODAY);
        HairHistory history =
            history(situation(new SaidTreatment("restorer", LAST, "whole", "home", "once")).cut(cuts).growing(growth));
        assertThat(history.cuts()).isEqualTo(cuts);
        assertThat(history.growth()).isEqualTo(growth).isNotEqualTo(Growth.PUBLISHED);
        assertThat(history(situation(new SaidTreatment("restorer", LAST, "whole", "home", "once"))).growth())
            .isEqualTo(Growth.PUBLISHED);
    }

    /** Slowest growth 0.5 cm a month, four months of rest: 36 months after the lotion 16 cm are free of it. */
    @Test
    void whatWasCutOffBehindTheLotionIsNoLongerSuspected() {
        Situation lotion = situation(
            new SaidTreatment("restorer", new SaidDate.OnDay(TODAY.minusYears(5)), "whole", "home", "regularly"));
        assertThat(suspected(lotion)).isTrue();
        assertThat(suspected(lotion.cut(List.of(new Cut(TODAY.minusYears(2), 17))))).isTrue();
        assertThat(suspected(lotion.cut(List.of(new Cut(TODAY.minusYears(2), 15))))).isFalse();
        assertThat(suspected(lotion.growing(new Growth(1.4, 1.4)))).isTrue();
    }

    private static boolean suspected(Situation situation) {
        HairHistory history = history(situation);
        return SafeSide.of(history.treatments().get(0), history.length(), history.cuts(), TODAY, history.slowed())
            .metalSuspected();
    }

    @Test
    @DisplayName("The strand map: ten cm of the ends may be anything from halfway to what else could have been said")
    void centimetresAreRead() {
        var ends = new SaidTreatment("restorer", LAST, "ends", "home", "once");
        assertThat(history(situation(ends.reaching("10-cm"))).treatments().get(0).extent())
            .contains(new Range(7.5, 12.5));
        assertThat(history(situation(ends)).treatments().get(0).extent()).isEmpty();
        assertThat(SaidTreatment.EXTENTS.stream().filter(cm -> !cm.equals(SaidTreatment.DONT_KNOW))
            .map(cm -> history(situation(ends.reaching(cm))).treatments().get(0).extent())).doesNotContain(
                Optional.empty());
    }
}
