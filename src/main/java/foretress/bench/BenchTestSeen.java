package foretress.bench;

import foretress.running.Stored;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** Something seen on one tuft while its test ran. */
@Entity
@Table(name = "bench_seen")
class BenchTestSeen extends Stored {
    @Column(name = "test_id") private UUID testId;
    @Column(name = "client_id") private UUID clientId;
    private String submission;
    @Column(name = "seen_at") private Instant seenAt;
    @Column(name = "seen_by") private UUID seenBy;
    @Column(name = "ran_millis") private long ranMillis;
    @Column(columnDefinition = "text") private String body;
    @Column(name = "struck_at") private Instant struckAt;
    @Column(name = "struck_by") private UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text") private String struckWhy;

    protected BenchTestSeen() {}

    /** @param ranMillis when it was seen, after the start of the test's clock */
    BenchTestSeen(BenchRecord test, String submission, long ranMillis, UUID by, Instant now,
        UnaryOperator<String> seal) {
        super(test, submission, by, now);
        this.testId = test.id();
        this.clientId = test.clientId();
        this.submission = submission;
        this.seenAt = now;
        this.seenBy = by;
        this.ranMillis = counted(ranMillis);
        this.body = sealed("body", seal);
    }

    boolean struck() {
        return struckAt != null;
    }

    /** Tapped in error: it says nothing any more. */
    void strike(UUID by, Instant now, UnaryOperator<String> seal) {
        this.struckAt = now;
        this.struckBy = by;
        this.struckWhy = sealed("struck_why", seal);
    }

    static List<BenchTestSeen> of(UUID testId) {
        return list("testId = ?1 order by ranMillis, seenAt, id", testId);
    }

    UUID testId() {
        return testId;
    }

    UUID clientId() {
        return clientId;
    }

    String submission() {
        return submission;
    }

    Instant seenAt() {
        return seenAt;
    }

    UUID seenBy() {
        return seenBy;
    }

    String body() {
        return body;
    }

    Instant struckAt() {
        return struckAt;
    }

    String struckWhy() {
        return struckWhy;
    }
}
