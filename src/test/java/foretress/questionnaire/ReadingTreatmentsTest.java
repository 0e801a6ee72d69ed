package foretress.questionnaire;

import static foretress.questionnaire.Posted.assertRefuses;
import static foretress.questionnaire.Posted.assertSays;
import static foretress.questionnaire.Posted.question;
import static foretress.questionnaire.Posted.read;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Treatments;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingTreatmentsTest {
    private final Question done = question("done", Kind.TREATMENTS, "restorer", "perm", "dont-know");
    private final SaidTreatment lotion =
        new SaidTreatment("restorer", new InSeason(Season.SUMMER, Year.of(2024)), "whole", "home", "regularly");
    private final SaidTreatment perm =
        new SaidTreatment("perm", new InYear(Year.of(2023)), "lengths-ends", "dont-know", "dont-know");
    private final Answers one = Answers.NONE.with("done", new Treatments(List.of(lotion)));
    private final String[] permFields =
        { "done.what", "perm", "done.when.precision", "year", "done.when.year", "2023", "done.zone", "lengths-ends" };

    private String[] permAnd(String... more) {
        return Stream.concat(Stream.of(permFields), Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void anEntryIsAddedAndTheListIsShownAgain() {
        FormReading reading = read(done, "done.act", "add", "done.what", "restorer", "done.when.precision", "season",
            "done.when.season", "summer",
            "done.when.year", "2024", "done.zone", "whole", "done.by", "home", "done.often", "regularly");
        assertSays(reading, new Treatments(List.of(lotion)));
        assertThat(reading.adding()).isTrue();
    }

    @Test
    void everySixWeeksForTwoYearsIsARepeatedTreatmentWithItsFirstAndLastTime() {
        FormReading reading = read(done, "done.act", "add", "done.what", "restorer", "done.when.precision", "month",
            "done.when.month", "2",
            "done.when.year", "2026", "done.zone", "regrowth", "done.often", "regularly", "done.every", "6-weeks",
            "done.since.precision", "years-ago", "done.since.ago", "2-3");
        assertSays(reading,
            new Treatments(
                List.of(new SaidTreatment("restorer", new InMonth(YearMonth.of(2026, 2)), "regrowth", "dont-know",
                    "regularly", "6-weeks", new YearsAgo(2, 3)))));
    }

    /** Without a script the fields of a repeated treatment stand on the page of one done once. */
    @Test
    void whatIsDoneOnceIsNeitherApartNorSince() {
        FormReading reading = read(done,
            permAnd("done.act", "add", "done.often", "once", "done.every", "yearly", "done.since.precision", "year",
                "done.since.year", "2025"));
        assertSays(reading, new Treatments(
            List.of(new SaidTreatment("perm", new InYear(Year.of(2023)), "lengths-ends", "dont-know", "once"))));
    }

    @Test
    void aFirstTimeAfterTheLastIsAskedAgain() {
        FormReading reading = read(done, one, permAnd("done.act", "add", "done.often", "several",
            "done.since.precision", "year", "done.since.year", "2024"));
        assertThat(reading.mistakes())
            .containsExactly(new AnswerMistake("done.since.precision", "first-after-last", List.of()));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    @Test
    void aFirstTimeThatCanBeBeforeTheLastIsTaken() {
        FormReading reading =
            read(done, permAnd("done.act", "add", "done.often", "several", "done.since.precision", "season",
                "done.since.season", "winter", "done.since.year", "2023"));
        assertThat(reading.clean()).isTrue();
    }

    @Test
    void aDateAloneIsNoEntryToBeLeftOutInSilence() {
        assertThat(
            read(done, one, "done.act", "done", "done.since.precision", "year", "done.since.year", "2020").mistakes())
            .extracting(AnswerMistake::field).contains("done.what");
    }

    @Test
    void whatIsNotSaidOfAnEntryIsNotKnown() {
        assertSays(read(done, one, permAnd("done.act", "add")), new Treatments(List.of(lotion, perm)));
    }

    @Test
    void anEntryFilledInWhenDoneIsPressedIsNotLost() {
        FormReading reading = read(done, one, permAnd("done.act", "done"));
        assertSays(reading, new Treatments(List.of(lotion, perm)));
        assertThat(reading.adding()).isFalse();
    }

    @Test
    void doneKeepsTheList() {
        assertSays(read(done, one, "done.act", "done"), new Treatments(List.of(lotion)));
    }

    @Test
    void aDateNotKnownIsADateOfAnEntry() {
        FormReading reading = read(done, "done.act", "add", "done.what", "dont-know", "done.when.precision",
            "dont-know", "done.zone", "dont-know");
        assertSays(reading, new Treatments(
            List.of(new SaidTreatment("dont-know", new NotKnown(), "dont-know", "dont-know", "dont-know"))));
    }

    @Test
    @DisplayName("A20 pressing done on an empty list does not say that nothing was done")
    void doneOnAnEmptyListIsNotNone() {
        assertRefuses(read(done, "done.act", "done"), "done.what", "required");
        assertRefuses(read(done), "done.what", "required");
    }

    @Test
    void noneIsSaidInSoManyWords() {
        assertSays(read(done, "done", "none", "done.act", "done"), new Treatments(List.of()));
        assertSays(read(done, "done.act", "none"), new Treatments(List.of()));
    }

    @Test
    void noneIsRefusedBesideEntriesAndTakesNoneAway() {
        FormReading listed = read(done, one, "done", "none", "done.act", "done");
        assertThat(listed.mistakes()).containsExactly(new AnswerMistake("done", "none-and-others", List.of("none")));
        assertThat(listed.over(one)).isEqualTo(one);
        assertThat(read(done, permAnd("done.act", "none")).mistakes()).extracting(AnswerMistake::code)
            .containsExactly("none-and-others");
    }

    @Test
    void notKnowingIsAnAnswerWhileNothingIsListed() {
        assertSays(read(done, "done", "dont-know", "done.act", "done"), Answer.DONT_KNOW);
        FormReading listed = read(done, one, "done", "dont-know", "done.act", "done");
        assertThat(listed.mistakes())
            .containsExactly(new AnswerMistake("done", "none-and-others", List.of("dont-know")));
        assertThat(listed.over(one)).isEqualTo(one);
    }

    @Test
    void eachGapOfAnEntryIsNamedAndTheListStays() {
        FormReading reading = read(done, one, "done.act", "add", "done.by", "home");
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake("done.what", "required", List.of()),
            new AnswerMistake("done.when.precision", "required", List.of()),
            new AnswerMistake("done.zone", "required", List.of()));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    @Test
    void addingNothingIsNamed() {
        FormReading reading = read(done, one, "done.act", "add");
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake("done.what", "required", List.of()));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    @Test
    void aYearInTheFutureIsRefusedInAnEntryToo() {
        FormReading reading = read(done, one, "done.act", "add", "done.what", "perm", "done.when.precision", "year",
            "done.when.year", "2062",
            "done.zone", "ends");
        assertThat(reading.mistakes())
            .containsExactly(new AnswerMistake("done.when.year", "year-in-future", List.of("2062", "2026")));
        assertThat(reading.said("done.when.year")).isEqualTo("2062");
    }

    @ParameterizedTest
    @CsvSource({ "done.what, bath", "done.zone, moon", "done.by, robot", "done.every, blue-moon" })
    void forgedCodesOfAnEntryAreRefused(String field, String code) {
        List<String> fields = new ArrayList<>(
            List.of(permAnd("done.act", "add", "done.by", "home", "done.often", "several", "done.every", "yearly")));
        fields.set(fields.indexOf(field) + 1, code);
        FormReading reading = read(done, one, fields.toArray(String[]::new));
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake(field, "not-offered", List.of(code)));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    @Test
    void aForgedOftenIsRefused() {
        assertThat(read(done, one, permAnd("done.act", "add", "done.often", "always")).mistakes())
            .containsExactly(new AnswerMistake("done.often", "not-offered", List.of("always")));
    }

    @Test
    void anEntryIsDroppedByItsPlace() {
        Answers two = Answers.NONE.with("done", new Treatments(List.of(lotion, perm)));
        FormReading reading = read(done, two, "done.drop", "0");
        assertSays(reading, new Treatments(List.of(perm)));
        assertThat(reading.adding()).isTrue();
    }

    @Test
    @DisplayName("A20 dropping the last entry leaves the question open, not answered with none")
    void droppingTheLastEntryLeavesTheQuestionOpen() {
        FormReading reading = read(done, one, "done.drop", "0");
        assertThat(reading.clean()).isTrue();
        assertThat(reading.over(one)).isEqualTo(Answers.NONE);
    }

    @ParameterizedTest
    @ValueSource(strings = { "1", "-1", "x", "99999999999" })
    void thereIsNothingToDropElsewhere(String index) {
        FormReading reading = read(done, one, "done.drop", index);
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake("done.drop", "not-offered", List.of(index)));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    @Test
    void aListOfFortyIsFull() {
        Answers full = Answers.NONE.with("done", new Treatments(IntStream.range(0, 40).mapToObj(i -> lotion).toList()));
        assertThat(read(done, full, permAnd("done.act", "add")).mistakes())
            .containsExactly(new AnswerMistake("done.what", "too-many", List.of("40")));
        Answers nearly =
            Answers.NONE.with("done", new Treatments(IntStream.range(0, 39).mapToObj(i -> lotion).toList()));
        assertThat(read(done, nearly, permAnd("done.act", "add")).clean()).isTrue();
    }

    @Test
    void aForgedActIsRefused() {
        FormReading reading = read(done, one, "done.act", "erase");
        assertThat(reading.mistakes()).containsExactly(new AnswerMistake("done.act", "not-offered", List.of("erase")));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    private static SaidTreatment first(Answers answers) {
        return ((Treatments) answers.to("done").orElseThrow()).list().get(0);
    }

    @ParameterizedTest
    @DisplayName("The strand map: of the new growth and of the ends a client says how many cm, of nothing else")
    @CsvSource({ "regrowth, 3-cm, 3-cm", "ends, 10-cm, 10-cm", "ends, '', dont-know", "whole, 10-cm, dont-know",
        "lengths-ends, 10-cm, dont-know", "strands, 2-cm, dont-know", "dont-know, 5-cm, dont-know" })
    void centimetresBelongToTheNewGrowthAndTheEnds(String zone, String cm, String reads) {
        FormReading reading = read(done, "done.act", "add", "done.what", "perm", "done.when.precision", "year",
            "done.when.year", "2023", "done.zone", zone, "done.extent", cm);
        assertThat(reading.mistakes()).isEmpty();
        assertThat(first(reading.answers()).extent()).isEqualTo(reads);
    }

    @Test
    void centimetresNobodyOfferedAreRefused() {
        FormReading reading = read(done, one, permAnd("done.act", "add", "done.extent", "400-cm"));
        assertThat(reading.mistakes())
            .containsExactly(new AnswerMistake("done.extent", "not-offered", List.of("400-cm")));
        assertThat(reading.over(one)).isEqualTo(one);
    }

    @Test
    void centimetresStayWhenItWasDoneAgainAndAgain() {
        FormReading reading = read(done, "done.act", "add", "done.what", "perm", "done.when.precision", "year",
            "done.when.year", "2023", "done.zone", "regrowth", "done.extent", "2-cm", "done.often", "regularly");
        assertThat(first(reading.answers()).extent()).isEqualTo("2-cm");
    }
}
