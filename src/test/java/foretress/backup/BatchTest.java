package foretress.backup;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("F10: a restore holds no more at once, however heavy the rows of a store are")
class BatchTest {
    private static final Object[] SHORT = { "a", 1L, null };
    private static final Object[] PHOTO = { String.join("", Collections.nCopies(1_400_000, "x")) };
    private static final Object[] BYTES = { new byte[1_400_000] };

    private static int untilFull(Object[] row) {
        var batch = new Batch();
        int rows = 1;
        while (!batch.isFullWith(row)) {
            rows++;
        }
        return rows;
    }

    @Test
    void shortRowsGoByHundreds() {
        assertThat(untilFull(SHORT)).isEqualTo(200);
    }

    @Test
    void photosGoByThrees() {
        assertThat(untilFull(PHOTO)).isEqualTo(3);
        assertThat(untilFull(BYTES)).isEqualTo(3);
    }

    @Test
    void whatIsWrittenIsNoLongerCounted() {
        var batch = new Batch();
        for (int i = 0; i < 10; i++) {
            assertThat(batch.isFullWith(PHOTO)).isFalse();
            batch.written();
        }
    }
}
