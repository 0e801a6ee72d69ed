package foretress.visit;

import static org.assertj.core.api.Assertions.assertThat;

import foretress.web.Zones;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** E13. The outside check is the zone rules shipped with Java (the IANA time zone database). */
class WallTimeTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @Test
    void aTimeSkippedInSpringDoesNotExistAndSaysWhereTheClockJumps() {
        // Clocks go forward at 01:00 on the last Sunday of March: 29 March 2026.
        assertThat(WallTime.read(LocalDateTime.parse("2026-03-29T01:30"), LONDON)).isEqualTo(
            new WallTime.Skipped(LocalDateTime.parse("2026-03-29T01:00"), LocalDateTime.parse("2026-03-29T02:00")));
    }

    @Test
    void aTimeRepeatedInAutumnMeansNothingUntilSomebodySaysWhich() {
        WallTime read = WallTime.read(LocalDateTime.parse("2026-10-25T01:30"), LONDON);
        assertThat(read.at(Optional.empty())).isEmpty();
        assertThat(read.at(Optional.of(WallTime.Turn.FIRST))).contains(Instant.parse("2026-10-25T00:30:00Z"));
        assertThat(read.at(Optional.of(WallTime.Turn.SECOND))).contains(Instant.parse("2026-10-25T01:30:00Z"));
    }

    @Test
    void everyReadingInEveryZoneShowsTheSameWallTimeAgain() {
        Instant from = Instant.parse("2016-01-01T00:00:00Z");
        Instant until = Instant.parse("2036-01-01T00:00:00Z");
        for (String id : Zones.ids()) {
            ZoneId zone = ZoneId.of(id);
            for (ZoneOffsetTransition jump = zone.getRules().nextTransition(from);
                jump != null && jump.getInstant().isBefore(until);
                jump = zone.getRules().nextTransition(jump.getInstant())) {
                holdsAround(jump, zone);
            }
        }
    }

    private static void holdsAround(ZoneOffsetTransition jump, ZoneId zone) {
        for (int minutes = -180; minutes <= 180; minutes += 15) {
            LocalDateTime wall = jump.getDateTimeBefore().plusMinutes(minutes);
            WallTime read = WallTime.read(wall, zone);
            if (read instanceof WallTime.Once once) {
                assertThat(shown(once.at(), zone)).isEqualTo(wall);
            }
            if (read instanceof WallTime.Twice twice) {
                assertThat(shown(twice.first(), zone)).isEqualTo(wall).isEqualTo(shown(twice.second(), zone));
                assertThat(twice.first()).isBefore(twice.second());
            }
            if (read instanceof WallTime.Skipped skipped) {
                assertThat(wall).isAfterOrEqualTo(skipped.last()).isBefore(skipped.next());
                assertThat(read.at(Optional.of(WallTime.Turn.FIRST))).isEmpty();
            }
        }
    }

    private static LocalDateTime shown(Instant instant, ZoneId zone) {
        return LocalDateTime.ofInstant(instant, zone);
    }
}
