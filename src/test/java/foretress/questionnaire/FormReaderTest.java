package foretress.questionnaire;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.questionnaire.Answer.Chosen;
import foretress.questionnaire.Answer.Length;
import foretress.questionnaire.Answer.Medicines;
import foretress.questionnaire.Answer.Said;
import foretress.questionnaire.Answer.Text;
import foretress.questionnaire.Answer.Treatments;
import foretress.questionnaire.Question.Keeps;
import foretress.questionnaire.Question.Kind;
import foretress.questionnaire.SaidDate.InMonth;
import foretress.questionnaire.SaidDate.InSeason;
import foretress.questionnaire.SaidDate.InYear;
import foretress.questionnaire.SaidDate.LongerThan;
import foretress.questionnaire.SaidDate.NotKnown;
import foretress.questionnaire.SaidDate.OnDay;
import foretress.questionnaire.SaidDate.Season;
import foretress.questionnaire.SaidDate.YearsAgo;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormReaderTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 15);

    private static Question question(String id, Kind kind, String... options) {
        return new Question(id, kind, List.of(options), true, true, Set.of(), Map.of(), true, Keeps.THE_DAY, false);
    }

    private static Question optional(String id, Kind kind, String... options) {
        return new Question(id, kind, List.of(options), false, false, Set.of(), Map.of(), false, Keeps.THE_DAY, false);
    }

    /** Field, value, field, value; a field named again holds several values. */
    private static Map<String, List<String>> form(String... fieldsAndValues) {
        Map<String, List<String>> form = new LinkedHashMap<>();
        for (int i = 0; i < fieldsAndValues.length; i += 2) {
            form.computeIfAbsent(fieldsAndValues[i], f -> new ArrayList<>()).add(fieldsAndValues[i + 1]);
        }
        return form;
    }

    private static Reading read(Question question, String... fieldsAndValues) {
        return read(question, Answers.NONE, fieldsAndValues);
    }

    private static Reading read(Question question, Answers earlier, String... fieldsAndValues) {
        return new FormReader(TODAY).read(List.of(question), form(fieldsAndValues), earlier);
    }

    private static void assertSays(Reading reading, Answer answer) {
        assertThat(reading.mistakes()).isEmpty();
        assertThat(reading.answers().byQuestion().values()).containsExactly(answer);
    }

    private static void assertRefuses(Reading reading, String field, String code, String... args) {
        assertThat(reading.mistakes()).containsExactly(new Mistake(field, code, List.of(args)));
        assertThat(reading.answers().byQuestion()).isEmpty();
    }

    @Nested
    class OneOf {
        private final Question itch = question("itch", Kind.ONE_OF, "yes", "no");

        @ParameterizedTest
        @ValueSource(strings = {"yes", "no"})
        void anOfferedCodeIsTaken(String code) {
            assertSays(read(itch, "itch", code), Chosen.of(code));
        }

        @Test
        void notKnowingAndNotSayingAreAnswersOfTheirOwn() {
            assertSays(read(itch, "itch", "dont-know"), Answer.DONT_KNOW);
            assertSays(read(itch, "itch", "rather-not-say"), Answer.RATHER_NOT_SAY);
        }

        @Test
        @DisplayName("A20 a blank is never a no")
        void aBlankIsNoAnswer() {
            assertRefuses(read(itch), "itch", "required");
            assertRefuses(read(itch, "itch", ""), "itch", "required");
            assertRefuses(read(itch, "itch", "  "), "itch", "required");
        }

        @Test
        void anOptionalQuestionMayStayBlank() {
            Reading reading = read(optional("itch", Kind.ONE_OF, "yes", "no"));
            assertThat(reading.clean()).isTrue();
            assertThat(reading.answers()).isEqualTo(Answers.NONE);
        }

        @ParameterizedTest
        @ValueSource(strings = {"maybe", "YES", " yes", "yes ", "none", "<b>"})
        void aForgedCodeIsRefused(String code) {
            assertRefuses(read(itch, "itch", code), "itch", "not-offered", code.strip());
        }

        @Test
        void aCodeWithANulBehindItIsForged() {
            assertRefuses(read(itch, "itch", "yes\0"), "itch", "not-offered", "yes");
        }

        @Test
        void notSayingIsRefusedWhereItIsNotOffered() {
            Question plain = optional("itch", Kind.ONE_OF, "yes", "no");
            assertRefuses(read(plain, "itch", "dont-know"), "itch", "not-offered", "dont-know");
            assertRefuses(read(plain, "itch", "rather-not-say"), "itch", "not-offered", "rather-not-say");
        }

        @Test
        @DisplayName("B24 doubled fields are refused")
        void twoValuesAreNotOne() {
            assertRefuses(read(itch, "itch", "yes", "itch", "no"), "itch", "doubled");
            assertRefuses(read(itch, "itch", "no", "itch", "no"), "itch", "doubled");
        }

        @Test
        void aLongForgedCodeIsRepeatedOnlyInPart() {
            assertRefuses(read(itch, "itch", "x".repeat(10_000)), "itch", "not-offered", "x".repeat(40) + "…");
        }
    }

    @Nested
    class SeveralOf {
        private final Question signs = question("signs", Kind.SEVERAL_OF, "itch", "hives", "faint", "none");

        @Test
        void codesComeInTheOrderOfTheQuestion() {
            assertSays(read(signs, "signs", "faint", "signs", "itch"), Chosen.of("itch", "faint"));
        }

        @Test
        void theSameCodeTwiceIsSaidOnce() {
            assertSays(read(signs, "signs", "itch", "signs", "itch"), Chosen.of("itch"));
        }

        @Test
        void noneAloneIsAnAnswer() {
            assertSays(read(signs, "signs", "none"), Chosen.of("none"));
        }

        @ParameterizedTest
        @ValueSource(strings = {"none", "dont-know", "rather-not-say"})
        void whatStandsAloneIsRefusedBesideOthers(String alone) {
            assertRefuses(read(signs, "signs", "hives", "signs", alone), "signs", "none-and-others", alone);
            assertRefuses(read(signs, "signs", alone, "signs", "hives"), "signs", "none-and-others", alone);
        }

        @Test
        void notKnowingAloneIsAnAnswer() {
            assertSays(read(signs, "signs", "dont-know"), Answer.DONT_KNOW);
            assertSays(read(signs, "signs", "rather-not-say"), Answer.RATHER_NOT_SAY);
        }

        @Test
        void oneForgedCodeRefusesTheWholeAnswer() {
            assertRefuses(read(signs, "signs", "hives", "signs", "wings"), "signs", "not-offered", "wings");
        }

        @Test
        void nothingTickedIsNotNone() {
            assertRefuses(read(signs), "signs", "required");
        }
    }

    @Nested
    class Dates {
        private final Question when = question("when", Kind.SAID_DATE);

        private Reading date(String... fieldsAndValues) {
            return read(when, Stream.of(fieldsAndValues).map(s -> s.startsWith(".") ? "when" + s : s).toArray(String[]::new));
        }

        @Test
        void everyPrecisionIsRead() {
            assertSays(date(".precision", "day", ".day", "15", ".month", "3", ".year", "2026"), new Said(new OnDay(TODAY)));
            assertSays(date(".precision", "month", ".month", "3", ".year", "2026"), new Said(new InMonth(YearMonth.of(2026, 3))));
            assertSays(date(".precision", "season", ".season", "summer", ".year", "2024"), new Said(new InSeason(Season.SUMMER, Year.of(2024))));
            assertSays(date(".precision", "year", ".year", "1900"), new Said(new InYear(Year.of(1900))));
            assertSays(date(".precision", "longer"), new Said(new LongerThan(5)));
            assertSays(date(".precision", "dont-know"), Answer.DONT_KNOW);
            assertSays(date(".precision", "rather-not-say"), Answer.RATHER_NOT_SAY);
        }

        @ParameterizedTest
        @CsvSource({"0-1, 0, 1", "1-2, 1, 2", "2-3, 2, 3", "3-5, 3, 5"})
        void yearsAgoAreBands(String code, int from, int to) {
            assertSays(date(".precision", "years-ago", ".ago", code), new Said(new YearsAgo(from, to)));
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
            assertSays(date(".precision", "year", ".year", "2024", ".month", "nonsense", ".day", "99"), new Said(new InYear(Year.of(2024))));
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
            assertRefuses(date(".precision", precision, ".year", "2024", precision.equals("day") ? ".month" : ".x", "3"), "when" + field, code);
        }

        @Test
        void aMissingYearSeasonOrBandIsNamed() {
            assertRefuses(date(".precision", "month", ".month", "3"), "when.year", "year-missing");
            assertRefuses(date(".precision", "year"), "when.year", "year-missing");
            assertRefuses(date(".precision", "season", ".year", "2024"), "when.season", "season-missing");
            assertRefuses(date(".precision", "years-ago"), "when.ago", "ago-missing");
        }

        @ParameterizedTest
        @ValueSource(strings = {"24", "0024", "year", "-2024", "2024.5", "20 24", "1e3", "２０２x", "9999999", "MMXXIV", "½", "²"})
        void whatIsNoYearIsRefused(String typed) {
            assertRefuses(date(".precision", "year", ".year", typed), "when.year", "not-a-year", typed);
        }

        @ParameterizedTest
        @CsvSource({"2027, year-in-future, 2026", "2062, year-in-future, 2026", "999999, year-in-future, 2026", "1899, year-too-early, 1900"})
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
            assertRefuses(date(".precision", "day", ".year", "2026", ".month", "3", ".day", "16"), "when.day", "day-in-future", "16", "3", "2026");
            assertRefuses(date(".precision", "month", ".year", "2026", ".month", "4"), "when.month", "month-in-future", "4", "2026");
            assertRefuses(date(".precision", "day", ".year", "2026", ".month", "4", ".day", "1"), "when.month", "month-in-future", "4", "2026");
        }

        @ParameterizedTest
        @CsvSource({"31, 2, 2024", "30, 2, 2024", "29, 2, 2023", "29, 2, 1900", "31, 4, 2025", "0, 1, 2025", "32, 1, 2025"})
        void aDayThatNeverWasIsRefused(String day, String month, String year) {
            assertRefuses(date(".precision", "day", ".day", day, ".month", month, ".year", year), "when.day", "not-a-day", day, month, year);
        }

        @Test
        @DisplayName("29 February 2000 was a day: every fourth century keeps its leap year (ISO 8601)")
        void theLeapDayOfTheCenturyIsADay() {
            assertThat(date(".precision", "day", ".day", "29", ".month", "2", ".year", "2000").clean()).isTrue();
        }

        @ParameterizedTest
        @ValueSource(strings = {"0", "13", "March", "-1"})
        void whatIsNoMonthIsRefused(String month) {
            assertRefuses(date(".precision", "month", ".month", month, ".year", "2024"), "when.month", "not-a-month", month);
        }

        @Test
        void forgedCodesAreRefused() {
            assertRefuses(date(".precision", "century", ".year", "2024"), "when.precision", "not-offered", "century");
            assertRefuses(date(".precision", "season", ".season", "monsoon", ".year", "2024"), "when.season", "not-offered", "monsoon");
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
            assertRefuses(read(plain, "when.precision", "rather-not-say"), "when.precision", "not-offered", "rather-not-say");
            assertRefuses(read(plain, "when.precision", "dont-know"), "when.precision", "not-offered", "dont-know");
        }
    }

    @Nested
    class DigitsOfAllScripts {
        private static Stream<Integer> zeros() {
            return IntStream.rangeClosed(0, Character.MAX_CODE_POINT)
                .filter(c -> Character.getType(c) == Character.DECIMAL_DIGIT_NUMBER && Character.digit(c, 10) == 0).boxed();
        }

        @Test
        @DisplayName("A30 the sixty and more digit sets of the Unicode character database are tried, Arabic to full-width")
        void thereAreManySets() {
            // Unicode 13.0, DerivedGeneralCategory.txt: 650 code points in Nd, ten a set (number from memory)
            assertThat(zeros().count()).isGreaterThanOrEqualTo(60);
            assertThat(zeros()).contains((int) '٠', (int) '۰', (int) '०', (int) '০', (int) '๐', (int) '０', 0x1D7CE);
        }

        @ParameterizedTest
        @MethodSource("zeros")
        @DisplayName("A30 every digit set reads alike")
        void everySetReadsAlike(int zero) {
            Question when = question("when", Kind.SAID_DATE);
            assertSays(read(when, "when.precision", "day", "when.day", in(zero, "29"), "when.month", in(zero, "2"), "when.year", in(zero, "2024")),
                new Said(new OnDay(LocalDate.of(2024, 2, 29))));
            Question hair = question("hair", Kind.HAIR_LENGTH);
            assertSays(read(hair, "hair.cm", in(zero, "107"), "hair.straight", "yes"), new Length(107, true));
        }

        private static String in(int zero, String digits) {
            StringBuilder other = new StringBuilder();
            digits.chars().forEach(d -> other.appendCodePoint(zero + d - '0'));
            return other.toString();
        }
    }

    @Nested
    class Lengths {
        private final Question hair = question("hair", Kind.HAIR_LENGTH);

        private Reading length(String typed, String unit) {
            return read(hair, "hair.cm", typed, "hair.unit", unit, "hair.straight", "yes");
        }

        @ParameterizedTest
        @CsvSource({
            "40, cm, 40", "1, cm, 1", "200, cm, 200", "'40,5', cm, 41", "40.1, cm, 41", "0.5, cm, 1", "٤٠٫٥, cm, 41", "40 cm, cm, 40", "40CM, cm, 40",
            // 1 inch is 2.54 cm exactly (international yard and pound agreement, 1959); rounded up
            "1, in, 3", "10, in, 26", "16, in, 41", "50, in, 127", "78, in, 199", "16 in, in, 41", "0.25, in, 1",
        })
        void lengthsAreReadInTheirUnitAndRoundedUp(String typed, String unit, int cm) {
            assertSays(length(typed, unit), new Length(cm, true));
        }

        @ParameterizedTest
        @CsvSource({"0, cm, 200", "201, cm, 200", "200.1, cm, 200", "999999, cm, 200", "0, in, 78", "79, in, 78"})
        void lengthsBeyondTheBordersNameThem(String typed, String unit, String most) {
            assertRefuses(length(typed, unit), "hair.cm", "length-out-of-range", typed, "1", most, unit);
        }

        @ParameterizedTest
        @ValueSource(strings = {"long", "-40", "4 0", "40 in", "1.2.3", "40.", "1e2", "½", "40 metres", "٤x"})
        void whatIsNoLengthIsRefused(String typed) {
            assertRefuses(length(typed, "cm"), "hair.cm", "not-a-length", typed);
        }

        @Test
        void hairNotDrawnStraightCountsAsNotDrawnStraight() {
            assertSays(read(hair, "hair.cm", "30", "hair.straight", "no"), new Length(30, false));
            assertSays(read(hair, "hair.cm", "30", "hair.straight", "dont-know"), new Length(30, false));
        }

        @Test
        void whetherItWasDrawnStraightMustBeSaid() {
            assertRefuses(read(hair, "hair.cm", "30"), "hair.straight", "required");
        }

        @Test
        void withoutAUnitItIsCentimetres() {
            assertSays(read(hair, "hair.cm", "30", "hair.straight", "yes"), new Length(30, true));
        }

        @Test
        void notKnowingIsAnAnswerButNotBesideALength() {
            assertSays(read(hair, "hair", "dont-know", "hair.unit", "cm"), Answer.DONT_KNOW);
            assertRefuses(read(hair, "hair", "dont-know", "hair.cm", "30"), "hair", "none-and-others", "dont-know");
        }

        @Test
        void nothingSaidIsRequired() {
            assertRefuses(read(hair, "hair.straight", "yes", "hair.unit", "cm"), "hair.cm", "required");
        }

        @Test
        void forgedUnitsAndDoubledLengthsAreRefused() {
            assertThat(read(hair, "hair.cm", "30", "hair.unit", "ell", "hair.straight", "yes").mistakes())
                .contains(new Mistake("hair.unit", "not-offered", List.of("ell")));
            assertThat(read(hair, "hair.cm", "30", "hair.cm", "3", "hair.straight", "yes").mistakes())
                .containsExactly(new Mistake("hair.cm", "doubled", List.of()));
        }
    }

    @Nested
    class TreatmentLists {
        private final Question done = question("done", Kind.TREATMENTS, "restorer", "perm", "dont-know");
        private final Treatment lotion = new Treatment("restorer", new InSeason(Season.SUMMER, Year.of(2024)), "whole", "home", "regularly");
        private final Treatment perm = new Treatment("perm", new InYear(Year.of(2023)), "lengths-ends", "dont-know", "dont-know");
        private final Answers one = Answers.NONE.with("done", new Treatments(List.of(lotion)));
        private final String[] permFields =
            {"done.what", "perm", "done.when.precision", "year", "done.when.year", "2023", "done.zone", "lengths-ends"};

        private String[] permAnd(String... more) {
            return Stream.concat(Stream.of(permFields), Stream.of(more)).toArray(String[]::new);
        }

        @Test
        void anEntryIsAddedAndTheListIsShownAgain() {
            Reading reading = read(done, "done.act", "add", "done.what", "restorer", "done.when.precision", "season", "done.when.season", "summer",
                "done.when.year", "2024", "done.zone", "whole", "done.by", "home", "done.often", "regularly");
            assertSays(reading, new Treatments(List.of(lotion)));
            assertThat(reading.adding()).isTrue();
        }

        @Test
        void whatIsNotSaidOfAnEntryIsNotKnown() {
            assertSays(read(done, one, permAnd("done.act", "add")), new Treatments(List.of(lotion, perm)));
        }

        @Test
        void anEntryFilledInWhenDoneIsPressedIsNotLost() {
            Reading reading = read(done, one, permAnd("done.act", "done"));
            assertSays(reading, new Treatments(List.of(lotion, perm)));
            assertThat(reading.adding()).isFalse();
        }

        @Test
        void doneKeepsTheList() {
            assertSays(read(done, one, "done.act", "done"), new Treatments(List.of(lotion)));
        }

        @Test
        void aDateNotKnownIsADateOfAnEntry() {
            Reading reading = read(done, "done.act", "add", "done.what", "dont-know", "done.when.precision", "dont-know", "done.zone", "dont-know");
            assertSays(reading, new Treatments(List.of(new Treatment("dont-know", new NotKnown(), "dont-know", "dont-know", "dont-know"))));
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
            Reading listed = read(done, one, "done", "none", "done.act", "done");
            assertThat(listed.mistakes()).containsExactly(new Mistake("done", "none-and-others", List.of("none")));
            assertThat(listed.over(one)).isEqualTo(one);
            assertThat(read(done, permAnd("done.act", "none")).mistakes()).extracting(Mistake::code).containsExactly("none-and-others");
        }

        @Test
        void notKnowingIsAnAnswerWhileNothingIsListed() {
            assertSays(read(done, "done", "dont-know", "done.act", "done"), Answer.DONT_KNOW);
            Reading listed = read(done, one, "done", "dont-know", "done.act", "done");
            assertThat(listed.mistakes()).containsExactly(new Mistake("done", "none-and-others", List.of("dont-know")));
            assertThat(listed.over(one)).isEqualTo(one);
        }

        @Test
        void eachGapOfAnEntryIsNamedAndTheListStays() {
            Reading reading = read(done, one, "done.act", "add", "done.by", "home");
            assertThat(reading.mistakes()).containsExactly(new Mistake("done.what", "required", List.of()),
                new Mistake("done.when.precision", "required", List.of()), new Mistake("done.zone", "required", List.of()));
            assertThat(reading.over(one)).isEqualTo(one);
        }

        @Test
        void addingNothingIsNamed() {
            Reading reading = read(done, one, "done.act", "add");
            assertThat(reading.mistakes()).containsExactly(new Mistake("done.what", "required", List.of()));
            assertThat(reading.over(one)).isEqualTo(one);
        }

        @Test
        void aYearInTheFutureIsRefusedInAnEntryToo() {
            Reading reading = read(done, one, "done.act", "add", "done.what", "perm", "done.when.precision", "year", "done.when.year", "2062",
                "done.zone", "ends");
            assertThat(reading.mistakes()).containsExactly(new Mistake("done.when.year", "year-in-future", List.of("2062", "2026")));
            assertThat(reading.said("done.when.year")).isEqualTo("2062");
        }

        @ParameterizedTest
        @CsvSource({"done.what, bath", "done.zone, moon", "done.by, robot", "done.often, always"})
        void forgedCodesOfAnEntryAreRefused(String field, String code) {
            List<String> fields = new ArrayList<>(List.of(permAnd("done.act", "add", "done.by", "home", "done.often", "once")));
            fields.set(fields.indexOf(field) + 1, code);
            Reading reading = read(done, one, fields.toArray(String[]::new));
            assertThat(reading.mistakes()).containsExactly(new Mistake(field, "not-offered", List.of(code)));
            assertThat(reading.over(one)).isEqualTo(one);
        }

        @Test
        void anEntryIsDroppedByItsPlace() {
            Answers two = Answers.NONE.with("done", new Treatments(List.of(lotion, perm)));
            Reading reading = read(done, two, "done.drop", "0");
            assertSays(reading, new Treatments(List.of(perm)));
            assertThat(reading.adding()).isTrue();
        }

        @Test
        @DisplayName("A20 dropping the last entry leaves the question open, not answered with none")
        void droppingTheLastEntryLeavesTheQuestionOpen() {
            Reading reading = read(done, one, "done.drop", "0");
            assertThat(reading.clean()).isTrue();
            assertThat(reading.over(one)).isEqualTo(Answers.NONE);
        }

        @ParameterizedTest
        @ValueSource(strings = {"1", "-1", "x", "99999999999"})
        void thereIsNothingToDropElsewhere(String index) {
            Reading reading = read(done, one, "done.drop", index);
            assertThat(reading.mistakes()).containsExactly(new Mistake("done.drop", "not-offered", List.of(index)));
            assertThat(reading.over(one)).isEqualTo(one);
        }

        @Test
        void aListOfFortyIsFull() {
            Answers full = Answers.NONE.with("done", new Treatments(IntStream.range(0, 40).mapToObj(i -> lotion).toList()));
            assertThat(read(done, full, permAnd("done.act", "add")).mistakes()).containsExactly(new Mistake("done.what", "too-many", List.of("40")));
            Answers nearly = Answers.NONE.with("done", new Treatments(IntStream.range(0, 39).mapToObj(i -> lotion).toList()));
            assertThat(read(done, nearly, permAnd("done.act", "add")).clean()).isTrue();
        }

        @Test
        void aForgedActIsRefused() {
            Reading reading = read(done, one, "done.act", "erase");
            assertThat(reading.mistakes()).containsExactly(new Mistake("done.act", "not-offered", List.of("erase")));
            assertThat(reading.over(one)).isEqualTo(one);
        }
    }

    @Nested
    class MedicineLists {
        private final Question taken = question("taken", Kind.MEDICINES);

        @Test
        void aMedicineIsTakenAsTyped() {
            assertSays(read(taken, "taken.act", "add", "taken.name", " Prednisolon\n 5 mg ", "taken.dose", "low", "taken.route", "mouth", "taken.last", "now"),
                new Medicines(List.of(new Medicine("Prednisolon 5 mg", "low", "mouth", "now"))));
        }

        @Test
        void whatIsNotSaidOfAMedicineWasNotAsked() {
            assertSays(read(taken, "taken.act", "done", "taken.name", "ميثوتريكسات 💊"),
                new Medicines(List.of(new Medicine("ميثوتريكسات 💊", Medicine.NOT_ASKED, Medicine.NOT_ASKED, Medicine.NOT_ASKED))));
        }

        @Test
        void bandsWithoutANameAreNoEntry() {
            assertRefuses(read(taken, "taken.act", "done", "taken.dose", "low"), "taken.name", "required");
        }

        @Test
        void aNameOfTwoHundredLettersIsTheLongest() {
            assertThat(read(taken, "taken.act", "add", "taken.name", "😀".repeat(200)).clean()).isTrue();
            assertRefuses(read(taken, "taken.act", "add", "taken.name", "😀".repeat(201)), "taken.name", "too-long", "200", "201");
        }

        @ParameterizedTest
        @CsvSource({"taken.dose, huge", "taken.route, ear", "taken.last, never"})
        void forgedBandsAreRefused(String field, String code) {
            assertRefuses(read(taken, "taken.act", "add", "taken.name", "x", field, code), field, "not-offered", code);
        }

        @Test
        void noneAndNotSayingAreAnswers() {
            assertSays(read(taken, "taken", "none"), new Medicines(List.of()));
            assertSays(read(taken, "taken", "rather-not-say"), Answer.RATHER_NOT_SAY);
            assertSays(read(taken, "taken", "dont-know"), Answer.DONT_KNOW);
            assertRefuses(read(taken, "taken", "plenty"), "taken", "not-offered", "plenty");
        }
    }

    @Nested
    class FreeWords {
        private final Question note = optional("note", Kind.NOTE);
        private final Question label = optional("label", Kind.INGREDIENTS);

        @Test
        void wordsAreKeptAsWritten() {
            assertSays(read(note, "note", "Mi pelo: ½ liso\r\n— «مجعد» 👩🏽‍🦱"), new Text("Mi pelo: ½ liso\n— «مجعد» 👩🏽‍🦱"));
        }

        @Test
        void whatNoHandTypesIsTakenOut() {
            assertSays(read(note, "note", "a\0b\u0007c\u001B[0m\u009Fd\uD800e\tf"), new Text("abc[0md\uFFFDe\tf"));
        }

        @Test
        void onlyControlLettersAreNothing() {
            assertThat(read(note, "note", "\0\0").answers()).isEqualTo(Answers.NONE);
            assertThat(read(note, "note", " \n\t ").answers()).isEqualTo(Answers.NONE);
        }

        @Test
        void lettersAreCountedAsPeopleCountThem() {
            assertThat(read(note, "note", "👍".repeat(1000)).clean()).isTrue();
            assertRefuses(read(note, "note", "👍".repeat(1001)), "note", "too-long", "1000", "1001");
            assertThat(read(label, "label", "a".repeat(4000)).clean()).isTrue();
            assertRefuses(read(label, "label", "a".repeat(4001)), "label", "too-long", "4000", "4001");
        }

        @Test
        void wordsThatAreTooLongAreGivenBackWhole() {
            String tenThousand = "x".repeat(10_000);
            Reading reading = read(note, "note", tenThousand);
            assertRefuses(reading, "note", "too-long", "1000", "10000");
            assertThat(reading.said("note")).isEqualTo(tenThousand);
        }

        @Test
        void markupIsOnlyWords() {
            assertSays(read(note, "note", "<script>alert(1)</script>"), new Text("<script>alert(1)</script>"));
        }
    }

    @Nested
    class Pages {
        private final Question itch = question("itch", Kind.ONE_OF, "yes", "no");
        private final Question itchWhat = question("itch-what", Kind.SEVERAL_OF, "hives", "none");

        @Test
        @DisplayName("B24 unknown fields never bind")
        void fieldsOfNoQuestionOnThePageAreIgnored() {
            Reading reading = new FormReader(TODAY).read(List.of(itch), form("itch", "no", "itch-what", "hives", "visit", "42", "itch.state", "signed"),
                Answers.NONE);
            assertThat(reading.answers().byQuestion()).containsOnlyKeys("itch");
            assertThat(reading.said()).doesNotContainKeys("itch-what", "visit");
        }

        @Test
        void oneMistakeLeavesTheOtherAnswersGood() {
            Reading reading = new FormReader(TODAY).read(List.of(itch, itchWhat), form("itch", "yes", "itch-what", "wings"), Answers.NONE);
            assertThat(reading.answers().byQuestion()).containsOnlyKeys("itch");
            assertThat(reading.mistakes()).containsExactly(new Mistake("itch-what", "not-offered", List.of("wings")));
            assertThat(reading.ticked("itch-what", "wings")).isTrue();
            assertThat(reading.mistakesAt("itch-what")).hasSize(1);
        }

        @Test
        void mistakesComeInTheOrderOfThePage() {
            Reading reading = new FormReader(TODAY).read(List.of(itchWhat, itch), form(), Answers.NONE);
            assertThat(reading.mistakes()).extracting(Mistake::field).containsExactly("itch-what", "itch");
        }

        @Test
        void anOptionalAnswerTakenBackIsGone() {
            Answers earlier = Answers.NONE.with("note", new Text("old")).with("other", Chosen.of("yes"));
            Reading reading = read(optional("note", Kind.NOTE), earlier, "note", "");
            assertThat(reading.over(earlier)).isEqualTo(Answers.NONE.with("other", Chosen.of("yes")));
        }

        @Test
        void aMistakeKeepsTheEarlierAnswer() {
            Answers earlier = Answers.NONE.with("itch", Chosen.of("yes"));
            assertThat(read(itch, earlier, "itch", "forged").over(earlier)).isEqualTo(earlier);
        }

        @Test
        @DisplayName("no page, however wild, brings an exception, an answer beside the question's codes, or silence")
        void wildPagesAreAlwaysAnsweredInKind() {
            Random random = new Random(20261124);
            List<Question> put = List.of(itch, itchWhat, question("when", Kind.SAID_DATE), question("hair", Kind.HAIR_LENGTH),
                question("done", Kind.TREATMENTS, "perm", "dont-know"), question("taken", Kind.MEDICINES), optional("note", Kind.NOTE));
            for (int i = 0; i < 20_000; i++) {
                Reading reading = new FormReader(TODAY).read(put, wild(random), Answers.NONE);
                for (Question question : put) {
                    boolean answered = reading.answers().to(question.id()).isPresent();
                    boolean refused = reading.mistakes().stream().anyMatch(m -> (m.field() + ".").startsWith(question.id() + "."));
                    assertThat(answered || refused || !question.required() || reading.adding()).isTrue();
                    assertThat(reading.answers().codes(question.id())).allMatch(question::offers);
                }
            }
        }

        private Map<String, List<String>> wild(Random random) {
            List<String> fields = List.of("itch", "itch-what", "when", "when.precision", "when.year", "when.month", "when.day", "when.season",
                "when.ago", "hair", "hair.cm", "hair.unit", "hair.straight", "done", "done.what", "done.when.precision", "done.when.year", "done.zone",
                "done.act", "done.drop", "taken", "taken.name", "taken.dose", "taken.act", "taken.drop", "note", "x");
            List<String> values = List.of("", " ", "yes", "no", "none", "dont-know", "rather-not-say", "hives", "day", "month", "season", "year",
                "summer", "years-ago", "2-3", "2024", "99999999", "-1", "0", "3", "31", "٣", "cm", "in", "perm", "whole", "add", "done", "\0", "\uD800", "😀", "%00");
            Map<String, List<String>> form = new LinkedHashMap<>();
            for (int i = random.nextInt(fields.size()); i > 0; i--) {
                form.computeIfAbsent(fields.get(random.nextInt(fields.size())), f -> new ArrayList<>()).add(values.get(random.nextInt(values.size())));
            }
            return form;
        }
    }
}
