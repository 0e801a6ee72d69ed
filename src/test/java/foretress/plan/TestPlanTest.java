package foretress.plan;

import static foretress.plan.Owed.Reason.CLOSED_UNTIL_TOO_LATE;
import static foretress.plan.Owed.Reason.TOO_SOON;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Policy;
import foretress.assessment.Stricter;
import foretress.questionnaire.SaidDate.Hemisphere;
import foretress.web.Zones;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TestPlanTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final List<String> BOTH = List.of("incompatibility-test", "skin-test");

    /**
     * Visits on the first working days after a change of the clocks. The hour to start was worked out by hand from each
     * zone's rules (IANA time-zone database 2025a, as java.time carries it) and holds for 48 hours on the physical clock;
     * taking two days off the calendar gives another hour, in four of the six one that is too late or too early.
     */
    @ParameterizedTest(name = "E14 {0} {1}: latest start {2}")
    @CsvSource({
        "Europe/London,       2026-03-30T10:00, 2026-03-28T09:00",
        "Europe/Berlin,       2026-10-26T10:00, 2026-10-24T11:00",
        "America/New_York,    2026-03-09T09:00, 2026-03-07T08:00",
        "Australia/Sydney,    2026-10-05T09:00, 2026-10-03T08:00",
        "Australia/Lord_Howe, 2026-04-06T09:00, 2026-04-04T09:30",
        "Africa/Casablanca,   2026-02-16T10:00, 2026-02-14T11:00" })
    void fortyEightHoursAreCountedOnThePhysicalClock(String zone, String visit, String latestStart) {
        ZoneId there = ZoneId.of(zone);
        Instant at = LocalDateTime.parse(visit).atZone(there).toInstant();
        Owed skin = plan(List.of("skin-test"), at, always(there), at.minus(Duration.ofDays(20))).owed().get(0);
        assertThat(skin.latestStart().atZone(there).toLocalDateTime()).isEqualTo(LocalDateTime.parse(latestStart));
        assertThat(Duration.between(skin.latestStart(), skin.latestRead())).isEqualTo(Duration.ofHours(48));
    }

    @Test
    @DisplayName("E14 a London test begun on the Saturday before the clocks go forward can be read at 11, not at 10")
    void anHourIsLostOverTheWeekend() {
        Instant begun = Instant.parse("2026-03-28T10:00:00Z");
        assertThat(begun.plus(Duration.ofHours(48)).atZone(LONDON).toLocalDateTime())
            .isEqualTo(LocalDateTime.parse("2026-03-30T11:00"));
        Instant tooEarly = LocalDateTime.parse("2026-03-30T10:00").atZone(LONDON).toInstant();
        Owed skin = plan(List.of("skin-test"), tooEarly, always(LONDON), begun).owed().get(0);
        assertThat(skin.conflict()).contains(new Owed.Conflict(TOO_SOON, Duration.ofHours(47), Duration.ofHours(48)));
    }

    /** A federation's rule of at least 48 hours: applied Monday 10:00, Wednesday 10:00 is the first moment, 9:59 is too early. */
    @Test
    void theWaitIsFullExactlyAtItsEnd() {
        Instant monday = at("2026-06-08T10:00");
        assertThat(plan(List.of("skin-test"), at("2026-06-10T10:00"), always(LONDON), monday).conflicts()).isEmpty();
        assertThat(plan(List.of("skin-test"), at("2026-06-10T09:59"), always(LONDON), monday).conflicts()).hasSize(1);
    }

    @Test
    void theLatestStartFallsBackToTheLastOpenMoment() {
        Instant visit = at("2026-06-10T10:00"); // a Wednesday; 48 hours before is Monday 10:00
        OpeningHours noMondays = week(LONDON, "09:00", "17:30", DayOfWeek.SUNDAY, DayOfWeek.MONDAY);
        TestPlan plan = plan(BOTH, visit, noMondays, at("2026-06-05T12:00"));
        assertThat(plan.owed()).extracting(Owed::test).containsExactly("skin-test", "incompatibility-test");
        assertThat(plan.owed().get(0).lastOpenStart()).contains(at("2026-06-06T17:15"));
        assertThat(plan.owed().get(1).lastOpenStart()).contains(at("2026-06-09T10:00"));
        assertThat(plan.lastStartOfAll()).contains(at("2026-06-06T17:15"));
    }

    @Test
    void aVisitTooSoonNamesHowLongIsLeftAndHowLongItTakes() {
        Instant now = at("2026-06-10T10:00");
        TestPlan plan = plan(BOTH, now.plus(Duration.ofHours(30)), always(LONDON), now);
        assertThat(plan.conflicts()).extracting(Owed::test).containsExactly("skin-test");
        assertThat(plan.conflicts().get(0).conflict())
            .contains(new Owed.Conflict(TOO_SOON, Duration.ofHours(30), Duration.ofHours(48)));
        assertThat(plan.lastStartOfAll()).isEmpty();
    }

    @Test
    void closedUntilTooLateIsAnotherConflict() {
        OpeningHours noSundays = week(LONDON, "09:00", "17:00", DayOfWeek.SUNDAY);
        Owed skin = plan(List.of("skin-test"), at("2026-06-10T08:00"), noSundays, at("2026-06-06T18:00")).owed().get(0);
        assertThat(skin.conflict().orElseThrow().reason()).isEqualTo(CLOSED_UNTIL_TOO_LATE);
    }

    @Test
    void onlyTestsWithAWaitNeedTimeBeforeTheVisit() {
        TestPlan plan = plan(List.of("test-cutting", "strand-test"), at("2026-06-10T10:00"), always(LONDON),
            at("2026-06-10T09:00"));
        assertThat(plan.nothingToWaitFor()).isTrue();
        assertThat(plan.onTheDay()).containsExactly("test-cutting", "strand-test");
    }

    @Test
    void whatIsRunningIsNoLongerToBeBegunAndWhatIsLeftStillIs() {
        Instant visit = at("2026-06-10T10:00");
        TestPlan all = plan(List.of("incompatibility-test", "skin-test", "strand-test"), visit, always(LONDON),
            visit.minus(Duration.ofDays(9)));
        assertThat(all.nothingToWaitFor()).isFalse();
        assertThat(all.tests()).containsExactly("skin-test", "incompatibility-test", "strand-test");
        assertThat(all.without(Set.of("skin-test")).tests()).containsExactly("incompatibility-test", "strand-test");
        assertThat(all.without(Set.of("strand-test")).onTheDay()).isEmpty();
        TestPlan waits = TestPlan.of(new Owing(List.of("strand-test"), List.of("skin-test", "test-cutting"), 0), visit,
            Weeks.WAITS, always(LONDON), visit.minus(Duration.ofDays(9)));
        assertThat(waits.waiting()).containsExactly("skin-test", "test-cutting");
        assertThat(waits.without(Set.of("skin-test")).waiting()).containsExactly("test-cutting");
        assertThat(waits.without(Set.of("skin-test")).onTheDay()).containsExactly("strand-test");
    }

    @Test
    void aVisitThatWouldDoIsTheLastOfThoseThatEachTestWantsAndNoneWhereNothingIsOwed() {
        Instant now = at("2026-06-10T10:00");
        TestPlan plan = plan(BOTH, now.plus(Duration.ofHours(10)), always(LONDON), now);
        assertThat(plan.visitFrom()).contains(now.plus(Duration.ofHours(48)));
        assertThat(plan(List.of("strand-test"), now.plus(Duration.ofHours(10)), always(LONDON), now).visitFrom())
            .isEmpty();
    }

    @Test
    void aTestMayStartInsideItsWindowsOnly() {
        Owed skin = plan(List.of("skin-test"), at("2026-06-11T14:00"), week(LONDON, "09:00", "17:30", DayOfWeek.SUNDAY),
            at("2026-06-08T09:00")).owed().get(0);
        assertThat(skin.mayStart(at("2026-06-08T09:00"))).isTrue();
        assertThat(skin.mayStart(at("2026-06-08T08:59"))).isFalse();
        assertThat(skin.mayStart(at("2026-06-08T17:16"))).isFalse();
        assertThat(skin.mayStart(skin.latestStart())).isTrue();
        assertThat(skin.mayStart(skin.latestStart().plusSeconds(1))).isFalse();
    }

    /** Six months (UK trade federation, since 2021): a test of 15 January stands through 15 July, one of 31 August through 28 February. */
    @ParameterizedTest
    @CsvSource({ "2025-07-15, 2025-01-15", "2025-07-16, 2025-01-16", "2026-02-28, 2025-08-28",
        "2026-03-01, 2025-09-01" })
    void aSkinTestIsNotBegunSoEarlyThatItIsTooOldOnTheDay(String visit, String firstDay) {
        Instant at = LocalDate.parse(visit).atTime(10, 0).atZone(LONDON).toInstant();
        Owed skin = plan(List.of("skin-test"), at, always(LONDON), at.minus(Duration.ofDays(400))).owed().get(0);
        assertThat(skin.earliestStart().atZone(LONDON).toLocalDate()).isEqualTo(LocalDate.parse(firstDay));
    }

    @Test
    @DisplayName("E13 an opening hour that the clocks skip is the moment they are put forward")
    void aSkippedOpeningHourIsTheChangeItself() {
        var early = new OpeningHours(
            new Week(Map.of(DayOfWeek.SUNDAY, List.of(new Week.Span(LocalTime.of(1, 30), LocalTime.of(9, 0))))),
            LONDON);
        assertThat(early.between(at("2026-03-29T00:00"), at("2026-03-29T12:00")))
            .containsExactly(new OpeningHours.Window(Instant.parse("2026-03-29T01:00:00Z"), at("2026-03-29T09:00")));
    }

    @Test
    @DisplayName("E14 in every zone, around every change of the clocks of twenty years, no start is later than the visit less the wait")
    void noWindowEverReachesPastTheLatestStart() {
        var random = new Random(14);
        long tried = Zones.ids().stream().sorted().map(ZoneId::of)
            .mapToLong(zone -> changes(zone).stream().peek(change -> neverTooLate(zone, change, random)).count()).sum();
        assertThat(tried).isGreaterThan(5_000);
    }

    private static List<Instant> changes(ZoneId zone) {
        ZoneRules rules = zone.getRules();
        List<Instant> found = new java.util.ArrayList<>();
        ZoneOffsetTransition next = rules.nextTransition(Instant.parse("2016-01-01T00:00:00Z"));
        while (next != null && next.getInstant().isBefore(Instant.parse("2036-01-01T00:00:00Z"))) {
            found.add(next.getInstant());
            next = rules.nextTransition(next.getInstant());
        }
        return found;
    }

    private static void neverTooLate(ZoneId zone, Instant change, Random random) {
        Instant visit = change.plusSeconds(random.nextInt(72 * 3600)).plusSeconds(-3 * 3600);
        OpeningHours hours = week(zone, "00:30", "23:00", DayOfWeek.SUNDAY);
        for (Owed test : plan(BOTH, visit, hours, visit.minus(Duration.ofDays(6))).owed()) {
            for (Owed.Starts window : test.windows()) {
                assertThat(window.last()).isAfterOrEqualTo(window.first()).isBeforeOrEqualTo(visit.minus(test.takes()));
                assertThat(window.first().atZone(zone).toLocalTime()).isBetween(LocalTime.of(0, 30),
                    LocalTime.of(22, 45));
                assertThat(window.last().atZone(zone).toLocalTime()).isBetween(LocalTime.of(0, 30),
                    LocalTime.of(22, 45));
            }
        }
    }

    private static TestPlan plan(List<String> demands, Instant visit, OpeningHours hours, Instant now) {
        return TestPlan.of(demands, visit, new Waits(POLICY, Stricter.of(POLICY), 0), hours, now);
    }

    private static Instant at(String wall) {
        return LocalDateTime.parse(wall).atZone(LONDON).toInstant();
    }

    private static OpeningHours always(ZoneId zone) {
        return week(zone, "00:00", "23:59:59.999999999");
    }

    private static OpeningHours week(ZoneId zone, String opens, String closes, DayOfWeek... shut) {
        Map<DayOfWeek, List<Week.Span>> week =
            Arrays.stream(DayOfWeek.values()).filter(day -> !List.of(shut).contains(day))
                .collect(Collectors.toMap(Function.identity(),
                    day -> List.of(new Week.Span(LocalTime.parse(opens), LocalTime.parse(closes)))));
        return new OpeningHours(new Week(week), Set.of(), zone);
    }

    private static final Policy POLICY =
        new Policy("uk", Map.of("skin-test-wait-hours", 48, "skin-test-validity-months", 6,
            "incompatibility-test-hours", 24), Map.of(), "999", "A4", Hemisphere.NORTH, List.of());
}
