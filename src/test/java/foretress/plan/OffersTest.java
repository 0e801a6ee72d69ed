package foretress.plan;

import static foretress.plan.Weeks.LONDON;
import static foretress.plan.Weeks.at;
import static org.assertj.core.api.Assertions.assertThat;

import foretress.assessment.Stricter;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("When a client can come in for a test")
class OffersTest {
    private static final List<String> SKIN = List.of("skin-test");

    private static Offers offers(Instant from, Instant visit, ZoneId zone, int most) {
        return Offers.of(TestPlan.of(SKIN, visit, Weeks.WAITS, Weeks.nineToSix(zone), from).owed(), most);
    }

    private static List<String> walls(Offers offers, ZoneId zone) {
        return offers.slots().stream().map(slot -> Weeks.wall(slot.start(), zone)).toList();
    }

    /**
     * The last start for a reading 48 hours of the physical clock later, over changes of the clocks; worked out by hand from the
     * zones' rules (IANA time-zone database 2025a). Closed on Sundays. Where the wait ends outside opening hours the last start is
     * a quarter of an hour before closing.
     */
    @ParameterizedTest(name = "{0}, visit {1}: come by {2}")
    @CsvSource({
        "Europe/London,       2026-03-30T10:00, 2026-03-28T09:00",
        "Europe/London,       2026-06-11T14:00, 2026-06-09T14:00",
        "America/New_York,    2026-11-02T09:30, 2026-10-31T10:30",
        "Australia/Lord_Howe, 2026-04-06T09:00, 2026-04-04T09:30",
        "America/New_York,    2026-03-10T10:00, 2026-03-07T17:45" })
    void theLatestIsTheVisitLessTheWait(String zoneId, String visit, String latest) {
        ZoneId zone = ZoneId.of(zoneId);
        Instant start = at(visit, zone);
        Offers offers = offers(start.minus(Duration.ofDays(10)), start, zone, 1000);
        assertThat(walls(offers, zone)).first().isEqualTo(latest);
        assertThat(offers.slots()).extracting(Offers.Slot::start).allSatisfy(one -> {
            assertThat(Duration.between(one, start)).isGreaterThanOrEqualTo(Duration.ofHours(48));
            assertThat(one.atZone(zone).toLocalTime()).isBetween(LocalTime.of(9, 0), LocalTime.of(17, 45));
            assertThat(one.atZone(zone).getDayOfWeek()).isNotEqualTo(DayOfWeek.SUNDAY);
        });
    }

    @Test
    void theVeryLastMomentIsOfferedEvenWhereItIsNoQuarter() {
        Instant visit = at("2026-06-11T14:05", LONDON);
        assertThat(walls(offers(visit.minus(Duration.ofDays(3)), visit, LONDON, 3), LONDON))
            .containsExactly("2026-06-09T14:05", "2026-06-09T14:00", "2026-06-09T13:45");
    }

    @Test
    void nothingIsOfferedOnceItIsTooLate() {
        Instant visit = at("2026-06-11T09:00", LONDON);
        assertThat(offers(at("2026-06-09T09:01", LONDON), visit, LONDON, 10).slots()).isEmpty();
        assertThat(offers(at("2026-06-06T18:00", LONDON), at("2026-06-10T08:59", LONDON), LONDON, 10).slots())
            .as("closed until too late").isEmpty();
    }

    @Test
    void itLeavesAQuarterOfAnHourBeforeClosing() {
        Offers offers = offers(at("2026-06-09T17:20", LONDON), at("2026-06-12T08:00", LONDON), LONDON, 10);
        assertThat(walls(offers, LONDON)).containsExactly("2026-06-09T17:45", "2026-06-09T17:30");
    }

    @Test
    @DisplayName("R11: the first slot is the latest, and where its wait ends as the visit begins nothing may go wrong")
    void theLatestSaysHowMuchMayGoWrong() {
        Offers offers = offers(at("2026-06-08T09:00", LONDON), at("2026-06-11T14:00", LONDON), LONDON, 3);
        assertThat(offers.slots()).extracting(Offers.Slot::latest).containsExactly(true, false, false);
        assertThat(offers.slots()).extracting(Offers.Slot::tight).containsExactly(true, false, false);
        assertThat(offers.slots()).extracting(slot -> slot.slack().toMinutes()).containsExactly(0L, 15L, 30L);
    }

    @Test
    @DisplayName("R11: a latest start before closing, whose wait ends while the salon is shut, leaves time in the morning")
    void theLatestNeedNotBeTight() {
        Offers offers = offers(at("2026-06-08T09:00", LONDON), at("2026-06-12T11:00", LONDON), LONDON, 1);
        assertThat(walls(offers, LONDON)).containsExactly("2026-06-10T11:00");
        Offers fromSunday = offers(at("2026-06-05T09:00", LONDON), at("2026-06-09T11:00", LONDON), LONDON, 1);
        assertThat(walls(fromSunday, LONDON)).as("48 hours before is a Sunday").containsExactly("2026-06-06T17:45");
        assertThat(fromSunday.slots().get(0).latest()).isTrue();
        assertThat(fromSunday.slots().get(0).tight()).as("Monday 17:45 to Tuesday 11:00").isFalse();
    }

    @Test
    void twoTestsBeginTogetherWhereBothCan() {
        Instant visit = at("2026-06-11T14:00", LONDON);
        TestPlan plan = TestPlan.of(List.of("incompatibility-test", "skin-test"), visit, Weeks.WAITS,
            Weeks.nineToSix(LONDON), at("2026-06-08T09:00", LONDON));
        assertThat(walls(Offers.of(plan.owed(), 1), LONDON)).containsExactly("2026-06-09T14:00");
        assertThat(plan.lastStartOfAll()).contains(at("2026-06-09T14:00", LONDON));
        TestPlan late = TestPlan.of(List.of("incompatibility-test", "skin-test"), visit, Weeks.WAITS,
            Weeks.nineToSix(LONDON), at("2026-06-10T09:00", LONDON));
        assertThat(Offers.of(late.owed(), 1).slots()).as("no moment does for both").isEmpty();
    }

    @Test
    void aMomentIsOnOfferOrItIsNotAndWhereNothingIsOwedNoneIs() {
        Offers offers = offers(at("2026-06-08T09:00", LONDON), at("2026-06-11T14:00", LONDON), LONDON, 3);
        assertThat(offers.latest()).contains(at("2026-06-09T14:00", LONDON));
        assertThat(offers.offer(at("2026-06-09T13:45", LONDON))).isTrue();
        assertThat(offers.offer(at("2026-06-09T13:46", LONDON))).isFalse();
        assertThat(offers.offer(at("2026-06-09T13:15", LONDON))).as("the fourth of three").isFalse();
        assertThat(Offers.of(List.of(), 3)).isEqualTo(Offers.NONE);
        assertThat(Offers.NONE.latest()).isEmpty();
        assertThat(Offers.NONE.offer(at("2026-06-09T13:45", LONDON))).isFalse();
    }

    /** From one minute past nine the first quarter is 9:15; a window of a single moment offers that moment, once. */
    @Test
    void theFirstMomentIsAQuarterOfTheHourAndTheOnlyOneIsOfferedOnce() {
        Instant visit = at("2026-06-11T10:00", LONDON);
        assertThat(walls(offers(at("2026-06-09T09:01", LONDON), visit, LONDON, 10), LONDON)).last()
            .isEqualTo("2026-06-09T09:15");
        assertThat(walls(offers(at("2026-06-09T10:00", LONDON), visit, LONDON, 10), LONDON))
            .containsExactly("2026-06-09T10:00");
        Instant odd = at("2026-06-11T10:07", LONDON);
        assertThat(walls(offers(at("2026-06-09T10:07", LONDON), odd, LONDON, 10), LONDON))
            .containsExactly("2026-06-09T10:07");
    }

    /** The salt test may begin on any day, the skin test from the birthday on: before it nothing begins together. */
    @Test
    void whereOneTestMayNotBeginYetNoneBeginsWithItInWhateverOrderTheyAreOwed() {
        var waits = new Waits(Weeks.POLICY, Stricter.of(Weeks.POLICY), 0, Optional.of(LocalDate.parse("2026-06-09")));
        List<Owed> owed = TestPlan.of(List.of("skin-test", "incompatibility-test"), at("2026-06-12T12:00", LONDON),
            waits, Weeks.nineToSix(LONDON), at("2026-06-05T12:00", LONDON)).owed();
        Offers together = Offers.of(owed, 1000);
        assertThat(walls(together, LONDON)).first().isEqualTo("2026-06-10T12:00");
        assertThat(walls(together, LONDON)).last().isEqualTo("2026-06-09T09:00");
        assertThat(Offers.of(List.of(owed.get(1), owed.get(0)), 1000)).isEqualTo(together);
    }
}
