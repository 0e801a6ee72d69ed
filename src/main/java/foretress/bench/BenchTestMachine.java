package foretress.bench;

import jakarta.inject.Singleton;

/** The Java machine's own counter. */
@Singleton
class BenchTestMachine implements BenchTestNanos {
    @Override
    public long read() {
        return System.nanoTime();
    }
}
