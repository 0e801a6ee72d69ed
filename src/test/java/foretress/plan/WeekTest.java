package foretress.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DayOfWeek;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WeekTest {
    @Test
    void aDayLeftOutIsClosed() {
        Week hours = Week.parse("TUESDAY 09:00-13:00, 14:00-18:00");
        assertThat(hours.on(DayOfWeek.MONDAY)).isEmpty();
        assertThat(hours.said(DayOfWeek.MONDAY)).isEmpty();
        assertThat(hours.said(DayOfWeek.TUESDAY)).contains("09:00–13:00, 14:00–18:00");
        assertThat(Week.parse("MONDAY; TUESDAY 09:00-13:00, 14:00-18:00;")).isEqualTo(hours);
    }

    @Test
    void whatIsWrittenIsReadBackTheSame() {
        Week hours = Week.parse("MONDAY closed; TUESDAY 09:00-13:00, 14:00-18:00; SUNDAY 10:00-12:30");
        assertThat(Week.parse(hours.toString())).isEqualTo(hours);
    }

    @ParameterizedTest
    @ValueSource(strings = { "9:00-17:30", "09:00 – 17:30", " 9:00 — 17:30 " })
    void aDayIsReadAsPeopleWriteIt(String typed) {
        assertThat(Week.spans(typed)).containsExactly(new Week.Span(LocalTime.of(9, 0), LocalTime.of(17, 30)));
    }

    @ParameterizedTest
    @ValueSource(strings = { "", "  ", "closed", "Closed" })
    void nothingIsClosed(String typed) {
        assertThat(Week.spans(typed)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
        strings = { "9", "9-17", "17:00-9:00", "9:00-9:00", "25:00-26:00", "09:00-13:00 14:00-18:00", "always" })
    void anythingElseIsRefused(String typed) {
        assertThatThrownBy(() -> Week.spans(typed)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void stretchesOfOneDayDoNotOverlap() {
        assertThatThrownBy(() -> Week.parse("MONDAY 09:00-13:00, 12:59-18:00")).hasMessageContaining("overlaps");
        assertThat(Week.parse("MONDAY 09:00-13:00, 13:00-18:00").on(DayOfWeek.MONDAY)).hasSize(2);
    }
}
