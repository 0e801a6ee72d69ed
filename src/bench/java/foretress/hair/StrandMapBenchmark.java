package foretress.hair;

import java.time.LocalDate;
import java.util.ArrayList;
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

/** How long a strand map takes, one treatment and thirty on 60 cm of hair. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class StrandMapBenchmark {
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 10);

    @Param({ "1", "30" }) int treatments;

    private HairHistory history;

    @Setup
    public void tell() {
        List<Treatment> list = new ArrayList<>();
        for (int i = 0; i < treatments; i++) {
            LocalDate day = TODAY.minusMonths(2L * i + 1);
            list.add(Treatment.once(Residue.values()[i % Residue.values().length], day.minusDays(90), day,
                Zone.values()[i % Zone.values().length], "t" + i));
        }
        history = HairHistory.of(HairLength.measured(60), list);
    }

    @Benchmark
    public StrandMap map() {
        return StrandMap.of(history, TODAY);
    }
}
