package foretress.plan;

import static foretress.plan.Owed.Reason.CLOSED_AT_THE_READING;
import static foretress.plan.Owed.Reason.CLOSED_UNTIL_TOO_LATE;
import static foretress.plan.Owed.Reason.STANDS_TOO_SHORT;
import static foretress.plan.Owed.Reason.TOO_SOON;
import static foretress.plan.Weeks.LONDON;
import static foretress.plan.Weeks.WAITS;
import static foretress.plan.Weeks.at;
import static foretress.plan.Weeks.nineToSix;
import static foretress.plan.Weeks.wall;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foretress.assessment.Leaflet;
import foretress.assessment.Stricter;
import foretress.assessment.Validity;
import foretress.plan.Week.Span;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Every expected instant was worked out by hand; the working stands above it. */
@DisplayName("R11: one planner: start and reading inside opening hours, with the minutes they take")
class PlannerTest {
    private static Owed skin(String visit, Waits waits, OpeningHours hours, String now) {
        return TestPlan.of(List.of("skin-test"), at(visit, hours.zone()), waits, hours, at(now, hours.zone())).owed()
            .get(0);
    }

    /** Visit Wed 17:55: a reading takes 10 minutes and ends by 18:00, so 17:50 is the last. Less 48 h: Mon 17:50; a start takes 15: 17:45. */
    @Test
    void theLastStartAndTheLastReadingEndBeforeClosing() {
        Owed skin = skin("2026-06-10T17:55", WAITS, nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(wall(skin.latestRead(), LONDON)).isEqualTo("2026-06-10T17:50");
        assertThat(wall(skin.latestStart(), LONDON)).isEqualTo("2026-06-08T17:45");
        assertThat(skin.lastOpenStart()).contains(skin.latestStart());
        assertThat(skin.slack(skin.latestStart())).isEqualTo(Duration.ofMinutes(5));
    }

    /**
     * Sixteen on Tue 9 June. Visit Fri 12 June 12:00; less 48 h is Wed 10 June 12:00. From Fri 5 June on the first start is on the
     * birthday, at nine. Of a visit on Wed 10 June it would have to begin on the Monday: too young; Thu 11 June 9:00 would do.
     */
    @Test
    @DisplayName("R25: no skin test is planned for a day on which the client is under the label's age")
    void nobodyIsTestedBeforeTheLabelsAge() {
        var waits = new Waits(Weeks.POLICY, Stricter.of(Weeks.POLICY), 0,
            Optional.of(LocalDate.parse("2026-06-09")));
        Owed skin = skin("2026-06-12T12:00", waits, nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(wall(skin.firstOpenStart().orElseThrow(), LONDON)).isEqualTo("2026-06-09T09:00");
        assertThat(wall(skin.latestStart(), LONDON)).isEqualTo("2026-06-10T12:00");
        Owed early = skin("2026-06-10T12:00", waits, nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(early.windows()).isEmpty();
        assertThat(early.conflict().orElseThrow().reason()).isEqualTo(Owed.Reason.TOO_YOUNG);
        assertThat(wall(early.visitFrom().orElseThrow(), LONDON)).isEqualTo("2026-06-11T09:00");
    }

    /** The salon is shut from 21 December to 3 January. Visit Mon 4 January 10:00; less 48 h is Sat 2 January: shut; last open is Sat 19 December, to 18:00. */
    @Test
    void overClosedWeeksTheTestBeginsBeforeThem() {
        LocalDate[] closed =
            LocalDate.parse("2026-12-21").datesUntil(LocalDate.parse("2027-01-04")).toArray(LocalDate[]::new);
        Owed skin = skin("2027-01-04T10:00", WAITS, nineToSix(LONDON, closed), "2026-12-15T12:00");
        assertThat(wall(skin.latestStart(), LONDON)).isEqualTo("2026-12-19T17:45");
        assertThat(skin("2027-01-04T10:00", WAITS, nineToSix(LONDON, closed), "2026-12-28T12:00").conflict()
            .orElseThrow().reason())
            .isEqualTo(CLOSED_UNTIL_TOO_LATE);
    }

    /**
     * Open on Thursdays from three to six and never else. Visit Thu 18 June 16:00; less 48 h is Tue: shut; last open is Thu 11 June,
     * 17:45. Begun then the wait ends Sat 17:45, shut; the next open moment is Thu 18 June 15:00: an hour before the visit.
     * From Wed 10 June the first start is Thu 11 June 15:00, its wait ends Sat 15:00, and Thu 18 June 15:00 is the first visit.
     */
    @Test
    void aSalonOpenThreeHoursAWeek() {
        var hours = new OpeningHours(Week.parse("THURSDAY 15:00-18:00"), LONDON);
        Owed skin = skin("2026-06-18T16:00", WAITS, hours, "2026-06-10T12:00");
        assertThat(wall(skin.latestStart(), LONDON)).isEqualTo("2026-06-11T17:45");
        assertThat(skin.readingsFrom(skin.latestStart(), hours)).containsExactly(at("2026-06-18T15:00", LONDON));
        assertThat(skin.visitFrom()).contains(at("2026-06-18T15:00", LONDON));
        Owed late = skin("2026-06-18T16:00", WAITS, hours, "2026-06-11T18:00");
        assertThat(late.conflict().orElseThrow().reason()).isEqualTo(CLOSED_UNTIL_TOO_LATE);
        assertThat(late.visitFrom()).contains(at("2026-06-25T15:00", LONDON));
    }

    /**
     * 25 May 2026 is a Monday and a holiday; Sundays are shut. The visit is at 10:00 that day, with the door closed: it can be read at
     * the latest on Sat 23 May 17:50. Less 48 h: Thu 21 May 17:50; the start takes 15 minutes: 17:45.
     */
    @Test
    void aVisitOnAHolidayIsSaidAndItsTestReadBefore() {
        OpeningHours hours = nineToSix(LONDON, LocalDate.parse("2026-05-25"));
        TestPlan plan = TestPlan.of(List.of("skin-test"), at("2026-05-25T10:00", LONDON), WAITS, hours,
            at("2026-05-18T12:00", LONDON));
        assertThat(plan.shut()).isTrue();
        assertThat(wall(plan.owed().get(0).latestRead(), LONDON)).isEqualTo("2026-05-23T17:50");
        assertThat(wall(plan.owed().get(0).latestStart(), LONDON)).isEqualTo("2026-05-21T17:45");
        assertThat(
            TestPlan.of(List.of(), at("2026-05-26T10:00", LONDON), WAITS, hours, at("2026-05-18T12:00", LONDON)).shut())
            .isFalse();
    }

    /**
     * Tuesdays are shut, and the visit is on Wed 10 June at 08:30, before the door opens at 9. The last reading is Mon 8 June 17:50;
     * less 48 h Sat 6 June 17:50, so 17:45. From Sun 7 June there is no time any more although 48 h before the visit is Mon 08:30.
     */
    @Test
    void aReadingThatWouldFallOnAClosedDayIsTheConflict() {
        var hours = new OpeningHours(Weeks.of("09:00", "18:00", DayOfWeek.SUNDAY, DayOfWeek.TUESDAY), LONDON);
        assertThat(wall(skin("2026-06-10T08:30", WAITS, hours, "2026-06-05T12:00").latestStart(), LONDON))
            .isEqualTo("2026-06-06T17:45");
        Owed late = skin("2026-06-10T08:30", WAITS, hours, "2026-06-07T12:00");
        assertThat(late.conflict().orElseThrow().reason()).isEqualTo(CLOSED_AT_THE_READING);
        assertThat(late.visitFrom()).as("Mon 9:00, and 48 h later Wed 9:00").contains(at("2026-06-10T09:00", LONDON));
        assertThat(skin("2026-06-10T08:30", WAITS, hours, "2026-06-08T12:00").conflict().orElseThrow().reason())
            .isEqualTo(TOO_SOON);
    }

    /** A leaflet whose test stands a day and waits 48 hours: no hour of any day would do, and no visit either. */
    @Test
    void aTestThatStandsForLessThanItsWaitIsNamedAsSuch() {
        Waits short_ = Weeks.leaflet(new Leaflet(48, new Validity.Days(1)));
        Owed skin = skin("2026-06-30T10:00", short_, nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(skin.conflict().orElseThrow().reason()).isEqualTo(STANDS_TOO_SHORT);
        assertThat(skin.visitFrom()).isEmpty();
        Owed late = skin("2026-06-06T10:00", short_, nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(late.conflict().orElseThrow().reason()).as("also where it is too soon besides")
            .isEqualTo(STANDS_TOO_SHORT);
        Waits twoDays = Weeks.leaflet(new Leaflet(48, new Validity.Days(2)));
        assertThat(skin("2026-06-25T10:00", twoDays, nineToSix(LONDON), "2026-06-05T12:00").conflict())
            .as("two days are just enough").isEmpty();
    }

    /** The salt test alone would do for a visit the next day; no visit would do for a skin test that stands too short. */
    @Test
    void whereOneTestCanNeverBeKeptNoVisitIsProposed() {
        Waits tooShort = Weeks.leaflet(new Leaflet(48, new Validity.Days(1)));
        Instant now = at("2026-06-05T12:00", LONDON);
        Instant visit = at("2026-06-30T10:00", LONDON);
        assertThat(TestPlan.of(List.of("skin-test", "incompatibility-test"), visit, tooShort, nineToSix(LONDON), now)
            .visitFrom()).isEmpty();
        assertThat(TestPlan.of(List.of("incompatibility-test"), visit, tooShort, nineToSix(LONDON), now).visitFrom())
            .contains(at("2026-06-06T12:00", LONDON));
    }

    /**
     * Chile puts its clocks forward on Sunday 6 September 2026 at midnight: 00:00 is 01:00 (IANA database 2025a; 04:00 UTC). The salon
     * is open every night from 0 to 3, Mondays apart. Visit Wed 9 September 01:00; less 48 h is Mon: shut; last is Sunday 02:45. On that
     * Sunday it opens at 01:00, for there is no midnight.
     */
    @Test
    void midnightThatTheClocksSkipIsNeverOffered() {
        ZoneId chile = ZoneId.of("America/Santiago");
        var hours = new OpeningHours(Weeks.of("00:00", "03:00", DayOfWeek.MONDAY), chile);
        Owed skin = skin("2026-09-09T01:00", WAITS, hours, "2026-09-05T12:00");
        assertThat(wall(skin.latestStart(), chile)).isEqualTo("2026-09-06T02:45");
        assertThat(skin.firstOpenStart()).contains(Instant.parse("2026-09-06T04:00:00Z"));
        assertThat(Offers.of(List.of(skin), 100).slots()).hasSize(8)
            .allSatisfy(slot -> assertThat(slot.start().atZone(chile).toLocalTime()).isBetween(LocalTime.of(1, 0),
                LocalTime.of(2, 45)));
    }

    /** Samoa had no 30 December 2011: the clocks went from the 29th, midnight, to the 31st. A salon open every day was not open on it for a moment. */
    @Test
    void aWholeDayThatTheClocksSkipOffersNothing() {
        ZoneId samoa = ZoneId.of("Pacific/Apia");
        var hours = new OpeningHours(Weeks.of("00:00", "23:00"), samoa);
        List<OpeningHours.Window> windows = hours.between(at("2011-12-29T00:00", samoa), at("2011-12-31T23:30", samoa));
        assertThat(windows).extracting(window -> window.from().atZone(samoa).toLocalDate().toString())
            .containsExactly("2011-12-29", "2011-12-31");
    }

    /**
     * A finding asks for a reading on day 3: 72 h. Visit Fri 12 June 14:00, so it begins by Tue 9 June 14:00 and is read Thu 14:00 and
     * Fri 14:00. Shut on Thursdays, the first reading moves to the next open moment, Fri 9:00.
     */
    @Test
    void readingsThatFindingsAskForAreInThePlan() {
        Owed skin = skin("2026-06-12T14:00", Weeks.readAgain(3), nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(skin.readings()).containsExactly(Duration.ofHours(48), Duration.ofHours(72));
        assertThat(wall(skin.latestStart(), LONDON)).isEqualTo("2026-06-09T14:00");
        assertThat(skin.readingsFrom(skin.latestStart(), nineToSix(LONDON)))
            .containsExactly(at("2026-06-11T14:00", LONDON), at("2026-06-12T14:00", LONDON));
        var noThursdays =
            new OpeningHours(Weeks.of("09:00", "18:00", DayOfWeek.SUNDAY, DayOfWeek.THURSDAY), LONDON);
        Owed moved = skin("2026-06-12T14:00", Weeks.readAgain(3), noThursdays, "2026-06-05T12:00");
        assertThat(moved.readingsFrom(moved.latestStart(), noThursdays)).containsExactly(at("2026-06-12T09:00", LONDON),
            at("2026-06-12T14:00", LONDON));
        assertThat(skin("2026-06-12T14:00", Weeks.readAgain(1), nineToSix(LONDON), "2026-06-05T12:00").readings())
            .as("never before the wait")
            .containsExactly(Duration.ofHours(48));
    }

    /** Two days are the 48 hours of the wait: one reading, not the same one twice; no reading lies before the test. */
    @Test
    void aReadingOnTheDayOfTheWaitIsTheWaitsOwn() {
        assertThat(Weeks.readAgain(2).readings("skin-test")).containsExactly(Duration.ofHours(48));
        assertThat(Weeks.readAgain(3).readings("skin-test")).containsExactly(Duration.ofHours(48),
            Duration.ofHours(72));
        assertThat(Weeks.readAgain(3).readings("incompatibility-test")).containsExactly(Duration.ofHours(24));
        assertThat(Weeks.readAgain(3).readings("strand-test")).isEmpty();
        assertThatThrownBy(() -> Weeks.readAgain(-1)).isInstanceOf(IllegalArgumentException.class)
            .hasMessageContaining("-1");
    }

    /** A visit of the past keeps no test, and no time is left until it; what its reading leaves is never less than none. */
    @Test
    void aVisitThatIsOverHasNoTimeLeft() {
        Owed skin = skin("2026-06-04T10:00", WAITS, nineToSix(LONDON), "2026-06-05T12:00");
        assertThat(skin.conflict().orElseThrow())
            .isEqualTo(new Owed.Conflict(TOO_SOON, Duration.ZERO, Duration.ofHours(48)));
        assertThat(skin.slack(at("2026-06-05T12:00", LONDON))).isEqualTo(Duration.ZERO);
        assertThat(skin.lastOpenStart()).isEmpty();
        assertThat(skin.firstOpenStart()).isEmpty();
    }

    /** From Friday 19:41 the first start is Sat 9:00; 48 h later it is Mon 9:00. "From Sunday 19:41 on" would be a closed door. */
    @Test
    void theEarliestVisitThatWouldDoIsWhenTheSalonIsOpen() {
        Owed skin = skin("2026-06-06T15:00", WAITS, nineToSix(LONDON), "2026-06-05T19:41");
        assertThat(skin.conflict().orElseThrow())
            .isEqualTo(new Owed.Conflict(TOO_SOON, Duration.ofMinutes(19 * 60 + 19), Duration.ofHours(48)));
        assertThat(skin.visitFrom()).contains(at("2026-06-08T09:00", LONDON));
        assertThat(skin("2026-06-06T15:00", WAITS, nineToSix(LONDON), "2026-06-04T10:07:30").visitFrom())
            .as("the next quarter, for a page shows no seconds")
            .contains(at("2026-06-06T10:15", LONDON));
        assertThat(skin("2026-06-06T15:00", WAITS, new OpeningHours(new Week(Map.of()), LONDON), "2026-06-05T19:41")
            .visitFrom()).as("never open").isEmpty();
    }

    /** The clocks go back in London on Sunday 25 October 2026: Saturday 11:00 BST is 48 h before Monday 10:00 GMT. */
    @Test
    void anHourIsGainedOverTheWeekend() {
        assertThat(wall(skin("2026-10-26T10:00", WAITS, nineToSix(LONDON), "2026-10-20T12:00").latestStart(), LONDON))
            .isEqualTo("2026-10-24T11:00");
    }

    @Test
    @DisplayName("R11: over random salons every offered start and its reading lie inside opening hours, and nothing later would do")
    void heldAgainstEveryMinuteOfTheClock() {
        var random = new Random(11);
        int offered = 0;
        for (int i = 0; i < 150; i++) {
            offered += held(random);
        }
        assertThat(offered).as("starts tried").isGreaterThan(1000);
    }

    private static int held(Random random) {
        ZoneId zone = ZoneId.of(
            List.of("Europe/London", "America/New_York", "Australia/Lord_Howe", "America/Santiago", "Asia/Kathmandu")
                .get(random.nextInt(5)));
        Instant now = Instant.parse(random.nextBoolean() ? "2026-03-20T00:00:00Z" : "2026-10-20T00:00:00Z")
            .plusSeconds(60L * random.nextInt(20_000));
        Instant visit = now.plusSeconds(60L * random.nextInt(9 * 24 * 60));
        OpeningHours hours = salon(zone, now, random);
        Waits waits = Weeks.readAgain(random.nextInt(4));
        Owed skin = TestPlan.of(List.of("skin-test"), visit, waits, hours, now).owed().get(0);
        Set<Instant> byHand = new TreeSet<>();
        boolean[] open = minutes(now, visit, hours);
        int left = (int) Duration.between(now, visit).toMinutes();
        for (int start = 0; start <= left; start++) {
            if (open(start, 15, open) && readable(start + (int) skin.takes().toMinutes(), left, open)) {
                byHand.add(now.plusSeconds(60L * start));
            }
        }
        Set<Instant> planned = new TreeSet<>();
        skin.windows().forEach(window -> {
            for (Instant at = window.first(); !at.isAfter(window.last()); at = at.plusSeconds(60)) {
                planned.add(at);
            }
        });
        assertThat(planned).as("%s, %s, visit %s, now %s", hours, waits, visit, now).isEqualTo(byHand);
        assertThat(skin.conflict().isPresent()).isEqualTo(byHand.isEmpty());
        List<Offers.Slot> slots = Offers.of(List.of(skin), 1000).slots();
        assertThat(byHand).containsAll(slots.stream().map(Offers.Slot::start).toList());
        slots.stream().findFirst()
            .ifPresent(slot -> assertThat(slot.start()).isEqualTo(new ArrayList<>(byHand).get(byHand.size() - 1)));
        skin.visitFrom()
            .ifPresent(from -> assertThat(TestPlan.of(List.of("skin-test"), from, waits, hours, now).conflicts())
                .as("a visit from %s on", from).isEmpty());
        return slots.size();
    }

    private static OpeningHours salon(ZoneId zone, Instant now, Random random) {
        Map<DayOfWeek, List<Span>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            int opens = 5 * 60 + 5 * random.nextInt(60);
            int lunch = opens + 10 + 5 * random.nextInt(40);
            List<Span> two = List.of(new Span(time(opens), time(lunch)),
                new Span(time(lunch + 5 * random.nextInt(12)), time(lunch + 60 + 5 * random.nextInt(60))));
            week.put(day, random.nextInt(4) == 0 ? List.of() : random.nextBoolean() ? two : two.subList(0, 1));
        }
        Set<LocalDate> closed = new HashSet<>();
        for (int i = 0; i < 2; i++) {
            closed.add(now.atZone(zone).toLocalDate().plusDays(random.nextInt(9)));
        }
        return new OpeningHours(new Week(week), closed, zone);
    }

    private static LocalTime time(int minutes) {
        return LocalTime.of(minutes / 60, minutes % 60);
    }

    private static boolean readable(int from, int visit, boolean[] open) {
        for (int at = from; at <= visit; at++) {
            if (open(at, 10, open)) {
                return true;
            }
        }
        return false;
    }

    private static boolean open(int from, int minutes, boolean[] open) {
        for (int i = from; i < from + minutes; i++) {
            if (!open[i]) {
                return false;
            }
        }
        return true;
    }

    /** Looks at the clock on the wall in every single minute. */
    private static boolean[] minutes(Instant now, Instant visit, OpeningHours hours) {
        boolean[] open = new boolean[(int) Duration.between(now, visit).toMinutes() + 30];
        for (int i = 0; i < open.length; i++) {
            ZonedDateTime there = now.plusSeconds(60L * i).atZone(hours.zone());
            open[i] = !hours.closed().contains(there.toLocalDate()) && hours.week().on(there.getDayOfWeek()).stream()
                .anyMatch(
                    span -> !there.toLocalTime().isBefore(span.from()) && there.toLocalTime().isBefore(span.to()));
        }
        return open;
    }
}
