package foretress.bench;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** A time without a server, or in which its machine slept, while a test's clock ran: as far as the clock on the wall tells it. */
@Entity
@Table(name = "bench_gap")
public class BenchGap extends Stored {
    @Column(name = "ran_millis") private long ranMillis;
    @Column(name = "from_at") private Instant from;
    @Column(name = "to_at") private Instant to;
    /** The server was there all the time: its machine slept, or somebody put the clock on the wall forward. */
    private boolean asleep;

    protected BenchGap() {}

    private BenchGap(long ranMillis, Instant from, Instant to, boolean asleep) {
        super(from, to);
        this.ranMillis = ranMillis;
        this.from = from;
        this.to = ending(from, to);
        this.asleep = asleep;
    }

    /** A clock put back meanwhile tells no length: then it begins and ends at once. */
    static void keep(long ranMillis, Instant from, Instant to, boolean asleep) {
        new BenchGap(ranMillis, from, to, asleep).persist();
    }

    /** Those in which this test's clock stood still; which of them are this test's is told by the counter alone. */
    public static List<BenchGap> during(BenchRecord test) {
        return test.started().map(start -> {
            long end = test.lasted().map(lasted -> start.ranMillis() + lasted.ranMillis()).orElse(Long.MAX_VALUE);
            return BenchGap.<BenchGap>list("ranMillis >= ?1 and ranMillis < ?2 order by ranMillis, id",
                start.ranMillis(), end);
        }).orElse(List.of());
    }

    /** How long the machine slept while this test's clock ran, in ms. */
    static long asleepMillis(BenchRecord test) {
        return during(test).stream().filter(gap -> gap.asleep)
            .mapToLong(gap -> Duration.between(gap.from, gap.to).toMillis()).sum();
    }

    public Instant from() {
        return from;
    }

    public Instant to() {
        return to;
    }

    public boolean asleep() {
        return asleep;
    }
}
