package foretress.bench;

import jakarta.inject.Singleton;

/** The Java machine's own counter. */
@Singleton
class BenchMachine implements BenchNanos {
    @Override
    public long read() {
        return System.nanoTime();
    }
}
