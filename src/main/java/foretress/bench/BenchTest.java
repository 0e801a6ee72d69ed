package foretress.bench;

import foretress.visit.Client;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** One test at the bench. What was measured is sealed; one entered in error is struck out and stays. */
@Entity
@Table(name = "bench_test")
public class BenchTest extends PanacheEntityBase {
    /** MADE: prepared, nothing waits; RUNNING: its clock runs; ENDED: taken down, or done at once. */
    public enum State { MADE, RUNNING, ENDED }

    @Id
    public UUID id;
    @Column(name = "client_id")
    public UUID clientId;
    @Column(name = "visit_id")
    public UUID visitId;
    @Convert(converter = KindCode.class)
    public BenchTestKind kind;
    @Enumerated(EnumType.STRING)
    public State state;
    String submission;
    @Column(name = "made_at")
    public Instant madeAt;
    @Column(name = "made_by")
    public UUID madeBy;
    @Column(name = "started_at")
    Instant startedAt;
    @Column(name = "started_ran")
    Long startedRan;
    @Column(name = "started_steady")
    Long startedSteady;
    /** How long it takes, in seconds; 0 where nothing is waited for. */
    @Column(name = "wait_seconds")
    public int waitSeconds;
    @Column(name = "ended_at")
    Instant endedAt;
    @Column(name = "ended_by")
    UUID endedBy;
    @Column(name = "lasted_ran")
    Long lastedRan;
    @Column(name = "lasted_steady")
    Long lastedSteady;
    @Column(columnDefinition = "text")
    String body;
    @Column(columnDefinition = "text")
    String told;
    @Column(name = "struck_at")
    Instant struckAt;
    @Column(name = "struck_by")
    UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text")
    String struckWhy;
    @Version
    public int version;

    public Optional<Instant> startedAt() {
        return Optional.ofNullable(startedAt);
    }

    public Optional<Instant> endedAt() {
        return Optional.ofNullable(endedAt);
    }

    public Optional<UUID> endedBy() {
        return Optional.ofNullable(endedBy);
    }

    public Optional<Instant> struckAt() {
        return Optional.ofNullable(struckAt);
    }

    public Optional<UUID> struckBy() {
        return Optional.ofNullable(struckBy);
    }

    public boolean struck() {
        return struckAt != null;
    }

    Optional<Run> started() {
        return startedRan == null ? Optional.empty() : Optional.of(new Run(startedRan, startedSteady));
    }

    Optional<Run> lasted() {
        return lastedRan == null ? Optional.empty() : Optional.of(new Run(lastedRan, lastedSteady));
    }

    /** When it was begun: put into the dish, or else made. */
    public Instant begun() {
        return startedAt().orElse(madeAt);
    }

    String place(String column) {
        return "bench_test." + column + "." + id;
    }

    static Optional<BenchTest> one(UUID visitId, UUID id) {
        return find("id = ?1 and visitId = ?2", id, visitId).firstResultOptional();
    }

    static Optional<BenchTest> sent(UUID visitId, String submission) {
        return find("visitId = ?1 and submission = ?2", visitId, submission).firstResultOptional();
    }

    static List<BenchTest> ofClient(UUID clientId) {
        return list("clientId in " + Client.SAME_PERSON + " order by madeAt desc, id", clientId);
    }

    static List<BenchTest> ofVisit(UUID visitId) {
        return list("visitId = ?1 order by madeAt desc, id", visitId);
    }

    static List<BenchTest> running() {
        return list("state = ?1 and struckAt is null order by startedAt, id", State.RUNNING);
    }

    /** The kind as its code. */
    @Converter
    public static class KindCode implements AttributeConverter<BenchTestKind, String> {
        @Override public String convertToDatabaseColumn(BenchTestKind kind) {
            return kind == null ? null : kind.code();
        }

        @Override public BenchTestKind convertToEntityAttribute(String code) {
            return code == null ? null : BenchTestKind.of(code).orElseThrow(() -> new IllegalStateException("no such test: " + code));
        }
    }
}
