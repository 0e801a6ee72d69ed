package foretress.told;

import foretress.running.Asked;
import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** A complaint in the client's words, made by the link of a visit. What the owner did about it stands beside it; the words never change. */
@Entity
@Table(name = "complaint")
public class ComplaintMade extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    private UUID submission;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "acknowledge_by") private LocalDate acknowledgeBy;
    @Column(name = "acknowledged_at") private Instant acknowledgedAt;
    @Column(name = "acknowledged_by") private UUID acknowledgedBy;
    @Column(name = "answered_at") private Instant answeredAt;
    @Column(name = "answered_by") private UUID answeredBy;
    @Column(columnDefinition = "text") private String answer;
    @Version private int version;

    protected ComplaintMade() {}

    ComplaintMade(Visit visit, UUID submission, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, submission, now);
        this.visitId = visit.id;
        this.submission = submission;
        this.madeAt = now;
        this.acknowledgeBy = Deadline.of(now, visit.zone());
    }

    static Optional<ComplaintMade> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Newest first; those of a record that became one with this one are among them. */
    static List<ComplaintMade> ofClient(UUID clientId) {
        return Asked.once(List.of(ComplaintMade.class, clientId),
            () -> list("clientId in " + Client.SAME_PERSON + " order by madeAt desc, id", clientId));
    }

    /** Newest first. */
    static List<ComplaintMade> ofVisit(UUID visitId) {
        return list("visitId = ?1 order by madeAt desc, id", visitId);
    }

    /** Those that nobody answered yet, the most pressing first. */
    static List<ComplaintMade> unanswered() {
        return list("answeredAt is null order by acknowledgeBy, madeAt, id");
    }

    /** The salon has it. Once said it stays said. */
    void acknowledge(UUID by, Instant now) {
        needed(by, now);
        if (acknowledgedAt == null) {
            acknowledgedAt = now;
            acknowledgedBy = by;
        }
    }

    /** An answer acknowledges it too. Once given it stays. */
    void answer(UUID by, Instant now, UnaryOperator<String> seal) {
        needed(by, now);
        if (answeredAt == null) {
            this.answer = sealed("answer", seal);
            answeredAt = now;
            answeredBy = by;
            acknowledge(by, now);
        }
    }

    public UUID visitId() {
        return visitId;
    }

    public Instant madeAt() {
        return madeAt;
    }

    public LocalDate acknowledgeBy() {
        return acknowledgeBy;
    }

    public Optional<Instant> acknowledgedAt() {
        return Optional.ofNullable(acknowledgedAt);
    }

    public Optional<UUID> acknowledgedBy() {
        return Optional.ofNullable(acknowledgedBy);
    }

    public Optional<Instant> answeredAt() {
        return Optional.ofNullable(answeredAt);
    }

    public Optional<UUID> answeredBy() {
        return Optional.ofNullable(answeredBy);
    }

    String answer() {
        return answer;
    }
}
