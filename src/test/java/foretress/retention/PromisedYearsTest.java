package foretress.retention;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PromisedYearsTest {
    private static final PromisedYears SIX = new PromisedYears(6, 21);
    private static final int TRIES = 10_000;

    private static LocalDate day(int year, int month, int day) {
        return LocalDate.of(year, month, day);
    }

    @Test
    @DisplayName("six years after the last visit; of 29 February until 1 March")
    void years() {
        assertThat(SIX.until(day(2026, 5, 4), Optional.of(day(1965, 3, 4)))).isEqualTo(day(2032, 5, 4));
        assertThat(SIX.until(day(2024, 2, 29), Optional.empty())).isEqualTo(day(2030, 3, 1));
    }

    @Test
    @DisplayName("a minor's to the later day: 21 where the years end before, the years where they end after; 18 on the day is no minor")
    void minors() {
        assertThat(SIX.until(day(2026, 5, 4), Optional.of(day(2013, 7, 1)))).isEqualTo(day(2034, 7, 1));
        assertThat(SIX.until(day(2026, 5, 4), Optional.of(day(2009, 7, 1)))).isEqualTo(day(2032, 5, 4));
        assertThat(new PromisedYears(1, 30).until(day(2026, 7, 1), Optional.of(day(2008, 7, 1))))
            .isEqualTo(day(2027, 7, 1));
        assertThat(new PromisedYears(1, 21).until(day(2026, 7, 1), Optional.of(day(2012, 2, 29))))
            .isEqualTo(day(2033, 3, 1));
    }

    @Test
    @DisplayName("never before what the notice says: the years, and a minor's age; a visit more never ends it sooner for an adult")
    void neverTooEarly() {
        var dice = new Random(20261201);
        for (int i = 0; i < TRIES; i++) {
            var keeping = new PromisedYears(1 + dice.nextInt(30), 18 + dice.nextInt(13));
            LocalDate born = day(1930, 1, 1).plusDays(dice.nextInt(35_000));
            LocalDate last = born.plusDays(dice.nextInt(30_000));
            LocalDate end = keeping.until(last, Optional.of(born));
            assertThat(end).as("%s born %s, last here %s", keeping, born, last)
                .isAfterOrEqualTo(last.plusYears(keeping.years()))
                .isAfterOrEqualTo(keeping.until(last, Optional.empty()));
            if (last.isBefore(born.plusYears(18))) {
                assertThat(end).isAfterOrEqualTo(born.plusYears(keeping.minorAge()));
            } else if (last.isAfter(born.plusYears(18))) {
                assertThat(keeping.until(last.plusDays(dice.nextInt(900)), Optional.of(born))).isAfterOrEqualTo(end);
            }
        }
    }
}
