package foretress.plan;

import static foretress.plan.Weeks.LONDON;
import static foretress.plan.Weeks.at;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("When the salon is open")
class OpeningHoursTest {
    private static final Duration QUARTER = Duration.ofMinutes(15);

    private static OpeningHours on(String week, ZoneId zone) {
        return new OpeningHours(Week.parse(week), zone);
    }

    @Test
    void theNextMomentIsNowWhereItIsOpenAndElseTheNextOpening() {
        OpeningHours week = on("TUESDAY 09:00-12:00; THURSDAY 14:00-14:10", LONDON);
        Instant tuesday = at("2026-06-09T10:07", LONDON);
        assertThat(week.next(tuesday, QUARTER)).contains(tuesday);
        assertThat(week.next(at("2026-06-09T11:50", LONDON), QUARTER)).as("too short before closing, and on Thursday")
            .contains(at("2026-06-16T09:00", LONDON));
        assertThat(week.next(at("2026-06-08T10:00", LONDON), QUARTER)).contains(at("2026-06-09T09:00", LONDON));
    }

    @Test
    void theLastMomentLeavesTheWholeTimeBeforeClosing() {
        OpeningHours week = on("TUESDAY 09:00-12:00; THURSDAY 14:00-14:10", LONDON);
        assertThat(week.last(at("2026-06-12T10:00", LONDON), QUARTER)).as("ten minutes on Thursday hold no quarter")
            .contains(at("2026-06-09T11:45", LONDON));
        assertThat(week.last(at("2026-06-09T10:07", LONDON), QUARTER)).contains(at("2026-06-09T10:07", LONDON));
    }

    @Test
    void aMomentBeyondAWeekIsFoundAndNoneWhereThereIsNone() {
        OpeningHours week = on("TUESDAY 09:00-12:00", LONDON);
        var away = new OpeningHours(week.week(), Set.of(LocalDate.parse("2026-06-09"),
            LocalDate.parse("2026-06-16")), LONDON);
        assertThat(away.next(at("2026-06-08T10:00", LONDON), QUARTER)).contains(at("2026-06-23T09:00", LONDON));
        assertThat(away.last(at("2026-06-22T10:00", LONDON), QUARTER)).contains(at("2026-06-02T11:45", LONDON));
        OpeningHours never = on("MONDAY closed", LONDON);
        assertThat(never.next(at("2026-06-08T10:00", LONDON), QUARTER)).isEmpty();
        assertThat(never.last(at("2026-06-08T10:00", LONDON), QUARTER)).isEmpty();
    }

    @Test
    void somethingBeginsAndEndsWithinOneStretch() {
        OpeningHours week = on("TUESDAY 09:00-12:00, 12:00-13:00, 14:00-15:00", LONDON);
        assertThat(week.open(at("2026-06-09T11:50", LONDON), QUARTER)).as("what touches is one stretch").isTrue();
        assertThat(week.open(at("2026-06-09T12:45", LONDON), QUARTER)).isTrue();
        assertThat(week.open(at("2026-06-09T12:46", LONDON), QUARTER)).isFalse();
        assertThat(week.open(at("2026-06-09T13:50", LONDON), QUARTER)).isFalse();
    }

    /** The zones' rules: IANA time-zone database 2025a. In London 01:00–02:00 is skipped on 29 March and runs twice on 25 October. */
    @Test
    void whatTheClocksSkipOrRepeatIsOpenForAsLongAsItReallyIs() {
        OpeningHours nights = on("SUNDAY 00:30-01:30", LONDON);
        assertThat(nights.between(at("2026-03-29T00:00", LONDON), at("2026-03-29T12:00", LONDON)))
            .containsExactly(new OpeningHours.Window(Instant.parse("2026-03-29T00:30:00Z"),
                Instant.parse("2026-03-29T01:00:00Z")));
        assertThat(nights.between(Instant.parse("2026-10-24T22:00:00Z"), Instant.parse("2026-10-25T12:00:00Z")))
            .containsExactly(new OpeningHours.Window(Instant.parse("2026-10-24T23:30:00Z"),
                Instant.parse("2026-10-25T01:30:00Z")));
    }

    @Test
    @DisplayName("when the clocks go back one span reaches past the start of the next, and both are one stretch, sorted")
    void spansThatOverlapWhenClocksGoBack() {
        OpeningHours night = on("SUNDAY 00:30-01:30, 01:30-03:00", LONDON);
        assertThat(night.between(Instant.parse("2026-10-24T22:00:00Z"), Instant.parse("2026-10-25T12:00:00Z")))
            .containsExactly(new OpeningHours.Window(Instant.parse("2026-10-24T23:30:00Z"),
                Instant.parse("2026-10-25T03:00:00Z")));
        OpeningHours inside = on("SUNDAY 00:30-01:50, 01:50-01:55", LONDON);
        assertThat(inside.between(Instant.parse("2026-10-24T22:00:00Z"), Instant.parse("2026-10-25T12:00:00Z")))
            .containsExactly(new OpeningHours.Window(Instant.parse("2026-10-24T23:30:00Z"),
                Instant.parse("2026-10-25T01:55:00Z")));
    }
}
