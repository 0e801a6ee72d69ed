package foretress.lexicon;

import foretress.knowledge.Knowledge;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How long a pasted list of sixty names takes, against splitting it at its commas: names that are all known, the same with 5 % of
 * the characters damaged, and every other name one nobody knows.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class LabelBenchmark {
    private static final List<String> KNOWN =
        List.of("aqua", "p-phenylenediamine", "resorcinol", "m-aminophenol", "toluene-2,5-diamine sulfate",
            "hydrogen peroxide", "ammonium persulfate", "lead acetate", "silver nitrate", "bismuth citrate",
            "sodium hydroxide", "thioglycolic acid",
            "cetearyl alcohol", "glycerin", "ammonium hydroxide", "sodium sulfite", "ascorbic acid", "propylene glycol",
            "oleic acid", "lawsonia inermis");
    private static final int NAMES = 60;
    private static final long SEED = 1;

    @Param({ "known", "damaged", "half-unknown" }) String copy;

    private final LabelLexicon lexicon = Knowledge.load().labels();
    private String label;

    @Setup
    public void write() {
        String known =
            IntStream.range(0, NAMES).mapToObj(i -> KNOWN.get(i % KNOWN.size())).collect(Collectors.joining(", "));
        label = switch (copy) {
            case "known" -> known;
            case "damaged" -> new Noise(SEED, 0.05).damaged(known);
            default -> IntStream.range(0, NAMES)
                .mapToObj(i -> i % 2 == 0 ? KNOWN.get(i / 2 % KNOWN.size()) : "cetearyl glucoside " + i)
                .collect(Collectors.joining(", "));
        };
    }

    @Benchmark
    public LabelReading sixtyNames() {
        return lexicon.read(label);
    }

    @Benchmark
    public String[] splitAtItsCommas() {
        return label.split(",\\s*");
    }
}
