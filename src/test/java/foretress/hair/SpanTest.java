package foretress.hair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpanTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    private static LocalDate ago(double months) {
        return TODAY.minusDays(Math.round(months * Growth.DAYS_A_MONTH));
    }

    /** 20 cm at the slow rate and four months of rest are 44 months: what is longer ago no hair of 20 cm has seen. */
    @ParameterizedTest(name = "{0} to {1} months ago on 20 cm: {2}")
    @CsvSource({ "59, 20, 59", "79, 20, 79", "81, 20, 44", "300, 0, 44", "120, 50, 50", "60, 0, 60" })
    void onlyAPastWithoutAnEndIsCutOffAtWhatTheHairHasSeen(double earliest, double latest, double oldest) {
        Span span = Span.of(ago(earliest), ago(latest), TODAY, 20);
        assertThat(span.newest()).isCloseTo(latest, within(0.02));
        assertThat(span.oldest()).isCloseTo(oldest, within(0.02));
    }
}
