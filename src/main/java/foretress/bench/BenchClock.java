package foretress.bench;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;

/** How long the server had run when it last wrote so down. One row. */
@Entity
@Table(name = "bench_clock")
class BenchClock extends PanacheEntityBase {
    static final int ONLY = 1;

    @Id private int id;
    @Column(name = "ran_millis") private long ranMillis;
    @Column(name = "steady_millis") private long steadyMillis;
    private Instant wall;

    protected BenchClock() {}

    /** Writes down how long the server has run, in the one row. */
    static void keep(Run now, Instant wall) {
        BenchClock row = kept().orElseGet(BenchClock::new);
        boolean isNew = row.id != ONLY;
        row.id = ONLY;
        row.ranMillis = now.ranMillis();
        row.steadyMillis = now.steadyMillis();
        row.wall = wall;
        if (isNew) {
            row.persist();
        }
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
