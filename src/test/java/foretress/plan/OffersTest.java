package foretress.plan;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.plan.OpeningHours.Hours;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("When a client can come in for a test")
class OffersTest {
    private static OpeningHours nineToSix(ZoneId zone) {
        Map<DayOfWeek, List<Hours>> week = Arrays.stream(DayOfWeek.values()).filter(d -> d != DayOfWeek.SUNDAY)
            .collect(Collectors.toMap(Function.identity(), d -> List.of(new Hours(LocalTime.of(9, 0), LocalTime.of(18, 0)))));
        return new OpeningHours(week, zone);
    }

    private static Instant at(String wall, ZoneId zone) {
        return LocalDateTime.parse(wall).atZone(zone).toInstant();
    }

    private static List<String> walls(Offers offers, ZoneId zone) {
        return offers.starts().stream().map(start -> start.atZone(zone).toLocalDateTime().toString()).toList();
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
        "America/New_York,    2026-03-10T10:00, 2026-03-07T17:45"})
    void theLatestIsTheVisitLessTheWait(String zoneId, String visit, String latest) {
        ZoneId zone = ZoneId.of(zoneId);
        Instant start = at(visit, zone);
        Offers offers = Offers.between(start.minus(Duration.ofDays(10)), start.minus(Duration.ofHours(48)), nineToSix(zone), 1000);
        assertThat(walls(offers, zone)).first().isEqualTo(latest);
        assertThat(offers.starts()).allSatisfy(one -> {
            assertThat(Duration.between(one, start)).isGreaterThanOrEqualTo(Duration.ofHours(48));
            assertThat(one.atZone(zone).toLocalTime()).isBetween(LocalTime.of(9, 0), LocalTime.of(17, 45));
            assertThat(one.atZone(zone).getDayOfWeek()).isNotEqualTo(DayOfWeek.SUNDAY);
        });
    }

    @Test
    void theVeryLastMomentIsOfferedEvenWhereItIsNoQuarter() {
        ZoneId zone = ZoneId.of("Europe/London");
        Instant visit = at("2026-06-11T14:05", zone);
        assertThat(walls(Offers.between(visit.minus(Duration.ofDays(3)), visit.minus(Duration.ofHours(48)), nineToSix(zone), 3), zone))
            .containsExactly("2026-06-09T14:05", "2026-06-09T14:00", "2026-06-09T13:45");
    }

    @Test
    void nothingIsOfferedOnceItIsTooLate() {
        ZoneId zone = ZoneId.of("Europe/London");
        Instant now = at("2026-06-10T09:00", zone);
        assertThat(Offers.between(now, now.minusSeconds(1), nineToSix(zone), 10).starts()).isEmpty();
        assertThat(Offers.between(at("2026-06-07T00:00", zone), at("2026-06-07T23:00", zone), nineToSix(zone), 10).starts()).as("closed all day").isEmpty();
    }

    @Test
    void itLeavesAQuarterOfAnHourBeforeClosing() {
        ZoneId zone = ZoneId.of("Europe/London");
        Offers offers = Offers.between(at("2026-06-09T17:20", zone), at("2026-06-10T08:00", zone), nineToSix(zone), 10);
        assertThat(walls(offers, zone)).containsExactly("2026-06-09T17:45", "2026-06-09T17:30");
    }
}
