package foretress.bench;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Something seen on one tuft while its test ran. */
@Entity
@Table(name = "bench_seen")
class BenchTestSeen extends PanacheEntityBase {
    @Id UUID id;
    @Column(name = "test_id") UUID testId;
    @Column(name = "client_id") UUID clientId;
    String submission;
    @Column(name = "seen_at") Instant seenAt;
    @Column(name = "seen_by") UUID seenBy;
    @Column(name = "ran_millis") long ranMillis;
    @Column(columnDefinition = "text") String body;
    @Column(name = "struck_at") Instant struckAt;
    @Column(name = "struck_by") UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text") String struckWhy;

    String place(String column) {
        return "bench_seen." + column + "." + id;
    }

    static List<BenchTestSeen> of(UUID testId) {
        return list("testId = ?1 order by ranMillis, seenAt, id", testId);
    }
}
