package foretress.bench;

import io.quarkus.test.Mock;
import jakarta.inject.Singleton;
import java.time.Duration;

/** The machine's own counter in tests: runs like any other, and on until it is put back. */
@Mock
@Singleton
public class MovedNanos implements BenchNanos {
    private volatile long ahead;

    public void move(Duration further) {
        ahead += further.toNanos();
    }

    @Override
    public long read() {
        return System.nanoTime() + ahead;
    }
}
