package foretress.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClosedDaysTest {
    @Test
    void daysAndStretchesOfDaysAreReadALineEach() {
        ClosedDays closed = ClosedDays.parse("2026-12-24 to 2026-12-26\n\n 2027-05-01 \n2026-12-27 – 2026-12-28");
        assertThat(closed.days()).hasSize(6).contains(LocalDate.parse("2026-12-25"), LocalDate.parse("2027-05-01"));
        assertThat(closed).hasToString("2026-12-24 to 2026-12-28\n2027-05-01");
        assertThat(ClosedDays.parse(closed.toString())).isEqualTo(closed);
        assertThat(ClosedDays.parse("").days()).isEmpty();
    }

    @Test
    void asManyDaysAsAnybodyLooksAheadAndNotOneMore() {
        LocalDate first = LocalDate.parse("2026-01-01");
        String most = first + " to " + first.plusDays(ClosedDays.MOST - 1);
        assertThat(ClosedDays.parse(most).days()).hasSize(ClosedDays.MOST);
        assertThatThrownBy(() -> ClosedDays.parse(first + " to " + first.plusDays(ClosedDays.MOST)))
            .isInstanceOf(IllegalArgumentException.class)
            .hasMessage(first + " to " + first.plusDays(ClosedDays.MOST));
        assertThatThrownBy(() -> ClosedDays.parse(most + "\n" + first.plusDays(ClosedDays.MOST)))
            .hasMessage("more than 400 days");
        assertThat(ClosedDays.of(Set.of(first)).days()).containsExactly(first);
    }

    @ParameterizedTest
    @ValueSource(strings = { "24.12.2026", "2026-12-26 to 2026-12-24", "2026-02-30", "2026-12-24 to",
        "2026-12-24 to 2026-12-25 to 2026-12-26", "2026-01-01 to 2028-01-01" })
    void whatCannotBeIsRefusedWithTheLine(String line) {
        assertThatThrownBy(() -> ClosedDays.parse(line)).isInstanceOf(IllegalArgumentException.class).hasMessage(line);
    }
}
