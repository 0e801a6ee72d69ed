package foretress.bench;

import java.util.List;

/** What a test changes, and what stands under it. */
public record BenchAfter(List<BenchChange> changes, BenchTail tail) {}
