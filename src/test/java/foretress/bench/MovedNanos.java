package foretress.bench;

import io.quarkus.test.Mock;
import jakarta.inject.Singleton;
import java.time.Duration;

/** The machine's own counter in tests: runs like any other, and on until it is put back. */
@Mock
@Singleton
public class MovedNanos implements BenchNanos {
    private volatile long ahead;
    private volatile long step;

    public void move(Duration further) {
        ahead += further.toNanos();
    }

    /** How much passes from one reading to the next, as on a machine with much else to do. */
    public void step(Duration between) {
        step = between.toNanos();
    }

    @Override
    public long read() {
        ahead += step;
        return System.nanoTime() + ahead;
    }
}
