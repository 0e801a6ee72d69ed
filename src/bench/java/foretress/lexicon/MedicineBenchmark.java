package foretress.lexicon;

import foretress.knowledge.Knowledge;
import java.util.List;
import java.util.concurrent.TimeUnit;
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

/** How long eight typed lines of medicines take: right, and with a slip in each name. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class MedicineBenchmark {
    private static final List<String> RIGHT =
        List.of("prednisolone 5 mg once a day", "cetirizine", "methotrexate 10mg weekly", "metformin",
            "levothyroxine 50 mcg in the morning", "isotretinoin", "atorvastatin 20 mg",
            "hydrocortisone cream on my hands");
    private static final List<String> SLIPPED = List.of("prednisolne 5 mg once a day", "cetirizin hcl",
        "methotrexat 10mg weekly", "metfromin",
        "levothyroxne 50 mcg in the morning", "isotretinion", "atorvastatine 20 mg", "hydrocortsone cream on my hands");

    @Param({ "right", "slipped" }) String typed;

    private final MedicineLexicon lexicon = Knowledge.load().medicines();
    private List<String> lines;

    @Setup
    public void type() {
        lines = typed.equals("right") ? RIGHT : SLIPPED;
    }

    @Benchmark
    public int eightLines() {
        int names = 0;
        for (String line : lines) {
            names += lexicon.read(line).names().size();
        }
        return names;
    }
}
