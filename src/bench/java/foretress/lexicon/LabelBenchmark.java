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

/** How long a pasted list takes: sixty names, clean and slipped, against splitting it at its commas. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class LabelBenchmark {
    @Param({"clean", "slipped"})
    String copy;

    private final LabelLexicon lexicon = Knowledge.load().labels();
    private String label;

    @Setup
    public void write() {
        List<String> known = List.of("aqua", "p-phenylenediamine", "resorcinol", "m-aminophenol", "toluene-2,5-diamine sulfate", "hydrogen peroxide",
            "ammonium persulfate", "lead acetate", "silver nitrate", "bismuth citrate", "sodium hydroxide", "thioglycolic acid");
        String clean = IntStream.range(0, 60).mapToObj(i -> i % 2 == 0 ? known.get(i / 2 % known.size()) : "cetearyl glucoside " + i)
            .collect(Collectors.joining(", "));
        label = copy.equals("clean") ? clean : clean.replace("m-am", "rn-am").replace("lead", "1ead").replace("resorcinol", "res0rcinol");
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
