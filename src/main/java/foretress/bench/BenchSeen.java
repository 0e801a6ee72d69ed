package foretress.bench;

import foretress.vault.SealedRow;
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
class BenchSeen extends SealedRow {
    @Column(name = "test_id") private UUID testId;
    private String submission;
    @Column(name = "seen_at") private Instant seenAt;
    @Column(name = "seen_by") private UUID seenBy;
    @Column(name = "ran_millis") private long ranMillis;
    @Column(name = "struck_at") private Instant struckAt;
    @Column(name = "struck_by") private UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text") private String struckWhy;

    protected BenchSeen() {}

    /** @param ranMillis when it was seen, after the start of the test's clock */
    BenchSeen(BenchRecord test, String submission, long ranMillis, UUID by, Instant now,
        UnaryOperator<String> seal) {
        super(test.clientId(), seal, submission, by, now);
        this.testId = test.id();
        this.submission = submission;
        this.seenAt = now;
        this.seenBy = by;
        this.ranMillis = counted(ranMillis);
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

    static List<BenchSeen> of(UUID testId) {
        return list("testId = ?1 order by ranMillis, seenAt, id", testId);
    }

    UUID testId() {
        return testId;
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

    Instant struckAt() {
        return struckAt;
    }

    String struckWhy() {
        return struckWhy;
    }
}
