package foretress.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("One entry stands for one person, one page, one record and a quarter of an hour")
class ReadingsTest {
    private static final Instant NINE = Instant.parse("2026-06-01T09:00:00Z");

    private final Readings readings = new Readings();

    private static Reading at(Duration later) {
        return new Reading("petra", "consultation read", "visit 1", NINE.plus(later));
    }

    @Test
    void whatHasNoEntryIsNotCovered() {
        assertThat(readings.covers(at(Duration.ZERO))).isFalse();
    }

    @Test
    void theSameIsCoveredUntilTheSpanIsOverAndNotFromThenOn() {
        readings.add(at(Duration.ZERO));
        assertThat(readings.covers(at(Duration.ZERO))).isTrue();
        assertThat(readings.covers(at(Readings.SPAN.minusMillis(1)))).isTrue();
        assertThat(readings.covers(at(Readings.SPAN))).isFalse();
    }

    @Test
    void anotherPersonPageOrRecordHasItsOwn() {
        readings.add(at(Duration.ZERO));
        assertThat(readings.covers(new Reading("edda", "consultation read", "visit 1", NINE))).isFalse();
        assertThat(readings.covers(new Reading("petra", "bench read", "visit 1", NINE))).isFalse();
        assertThat(readings.covers(new Reading("petra", "consultation read", "visit 2", NINE))).isFalse();
    }

    @Test
    @DisplayName("a clock put back covers nothing: what was read before an entry is not told by it")
    void aClockPutBack() {
        readings.add(at(Duration.ZERO));
        assertThat(readings.covers(at(Duration.ofSeconds(-1)))).isFalse();
    }

    @Test
    @DisplayName("what is remembered has an end; beyond it everything has an entry of its own")
    void itHasAnEnd() {
        for (int i = 0; i < Readings.MOST; i++) {
            readings.add(new Reading("petra", "consultation read", "visit " + i, NINE));
        }
        var more = new Reading("petra", "consultation read", "one more", NINE);
        readings.add(more);
        assertThat(readings.covers(more)).isFalse();
        var later = new Reading("petra", "consultation read", "one more", NINE.plus(Readings.SPAN));
        readings.add(later);
        assertThat(readings.covers(later)).isTrue();
    }
}
