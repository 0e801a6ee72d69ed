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
class BenchTestClock extends PanacheEntityBase {
    static final int ONLY = 1;

    @Id int id;
    @Column(name = "ran_millis") long ranMillis;
    @Column(name = "steady_millis") long steadyMillis;
    Instant wall;

    static Optional<BenchTestClock> kept() {
        return findByIdOptional(ONLY);
    }

    Run run() {
        return new Run(ranMillis, steadyMillis);
    }
}
