package foretress.bench;

import foretress.running.Asked;
import foretress.running.CodeColumn;
import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** One test at the bench. What was measured is sealed; one entered in error is struck out and stays. */
@Entity
@Table(name = "bench_test")
public class BenchRecord extends SealedRow {
    /** MADE: prepared, nothing waits; RUNNING: its clock runs; ENDED: taken down, or done at once. */
    public enum State {
        MADE, RUNNING, ENDED
    }

    @Column(name = "visit_id") private UUID visitId;
    @Convert(converter = KindCode.class) private BenchKind kind;
    @Enumerated(EnumType.STRING) private State state;
    private String submission;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "made_by") private UUID madeBy;
    @Column(name = "started_at") private Instant startedAt;
    @Column(name = "started_ran") private Long startedRan;
    @Column(name = "started_steady") private Long startedSteady;
    /** How long it takes, in seconds; 0 where nothing is waited for. */
    @Column(name = "wait_seconds") private int waitSeconds;
    @Column(name = "ended_at") private Instant endedAt;
    @Column(name = "ended_by") private UUID endedBy;
    @Column(name = "lasted_ran") private Long lastedRan;
    @Column(name = "lasted_steady") private Long lastedSteady;
    @Column(columnDefinition = "text") private String told;
    @Column(name = "struck_at") private Instant struckAt;
    @Column(name = "struck_by") private UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text") private String struckWhy;
    @Version private int version;

    protected BenchRecord() {}

    /**
     * A test prepared; one whose clock never runs is done at once.
     *
     * @param body seals what was measured for the place it is given
     * @param told the same for what the client had told of the hair by then
     */
    BenchRecord(Visit visit, BenchKind kind, String submission, UUID by, Instant now, UnaryOperator<String> body,
        UnaryOperator<String> told) {
        super(visit.client.id, body, kind, submission, by, now);
        this.visitId = visit.id;
        this.kind = kind;
        this.state = kind.isWatched() ? State.MADE : State.ENDED;
        this.submission = submission;
        this.madeAt = now;
        this.madeBy = by;
        this.told = sealed("told", told);
    }

    /**
     * Its clock runs from here on.
     *
     * @throws IllegalStateException when it ran already, or was struck out
     */
    void start(Run now, Instant at, int seconds) {
        if (state != State.MADE || struck()) {
            throw new IllegalStateException("only what is prepared is started, not what is " + state);
        }
        int wait = (int) counted(seconds);
        this.state = State.RUNNING;
        this.startedAt = at;
        this.startedRan = now.ranMillis();
        this.startedSteady = now.steadyMillis();
        this.waitSeconds = wait;
    }

    /** Its clock stands still from here on. */
    void end(Run now, Instant at, UUID by) {
        Run lasted = started().map(now::since).orElse(Run.NONE);
        this.lastedRan = lasted.ranMillis();
        this.lastedSteady = lasted.steadyMillis();
        this.state = State.ENDED;
        this.endedAt = at;
        this.endedBy = by;
    }

    /** Entered in error: it says nothing any more. */
    void strike(UUID by, Instant now, UnaryOperator<String> seal) {
        this.struckAt = now;
        this.struckBy = by;
        this.struckWhy = sealed("struck_why", seal);
    }

    void measured(UnaryOperator<String> seal) {
        seal(seal);
    }

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

    static Optional<BenchRecord> one(UUID visitId, UUID id) {
        return find("id = ?1 and visitId = ?2", id, visitId).firstResultOptional();
    }

    static Optional<BenchRecord> sent(UUID visitId, String submission) {
        return find("visitId = ?1 and submission = ?2", visitId, submission).firstResultOptional();
    }

    static List<BenchRecord> ofClient(UUID clientId) {
        return OnFile.of(clientId, "bench_test", clientId,
            () -> list("clientId in " + Client.SAME_PERSON + " order by madeAt desc, id", clientId));
    }

    static List<BenchRecord> ofVisit(UUID visitId) {
        return Asked.once(List.of(BenchRecord.class, "visit", visitId),
            () -> list("visitId = ?1 order by madeAt desc, id", visitId));
    }

    static List<BenchRecord> running() {
        return list("state = ?1 and struckAt is null order by startedAt, id", State.RUNNING);
    }

    @Converter
    public static class KindCode extends CodeColumn<BenchKind> {
        public KindCode() {
            super(BenchKind.values(), BenchKind::code);
        }
    }

    public UUID visitId() {
        return visitId;
    }

    public BenchKind kind() {
        return kind;
    }

    public State state() {
        return state;
    }

    public Instant madeAt() {
        return madeAt;
    }

    public UUID madeBy() {
        return madeBy;
    }

    public int waitSeconds() {
        return waitSeconds;
    }

    String told() {
        return told;
    }

    String struckWhy() {
        return struckWhy;
    }

    public int version() {
        return version;
    }
}
