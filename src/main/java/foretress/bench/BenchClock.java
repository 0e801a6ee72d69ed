package foretress.bench;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** How long the server had run when it last wrote so down. One row. */
@Entity
@Table(name = "bench_clock")
class BenchClock extends PanacheEntityBase {
    static final int ONLY = 1;

    @Id private int id;
    @Column(name = "ran_millis") private long ranMillis;
    @Column(name = "steady_millis") private long steadyMillis;
    private Instant wall;
    /** The start of a server that wrote it. */
    private UUID writer;

    protected BenchClock() {}

    /**
     * What stands in the row after a writing.
     *
     * @param beside whether another server wrote it last: this start of this one is not the only one that counts
     */
    record Kept(Run run, boolean beside) {}

    /** Writes down how long the server has run, in the one row; of two servers that count, what the further one says stays. */
    static Kept keep(UUID writer, Run now, Instant wall) {
        Optional<BenchClock> kept = findByIdOptional(ONLY, LockModeType.PESSIMISTIC_WRITE);
        BenchClock row = kept.orElseGet(BenchClock::new);
        var after = new Kept(kept.map(BenchClock::run).map(now::orFurther).orElse(now),
            kept.isPresent() && !writer.equals(row.writer));
        row.id = ONLY;
        row.writer = writer;
        row.ranMillis = after.run.ranMillis();
        row.steadyMillis = after.run.steadyMillis();
        row.wall = wall;
        if (kept.isEmpty()) {
            row.persist();
        }
        return after;
    }

    static Optional<BenchClock> kept() {
        return findByIdOptional(ONLY);
    }

    Run run() {
        return new Run(ranMillis, steadyMillis);
    }

    long ranMillis() {
        return ranMillis;
    }

    Instant wall() {
        return wall;
    }
}
