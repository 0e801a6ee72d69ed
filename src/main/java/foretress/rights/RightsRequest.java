package foretress.rights;

import foretress.running.CodeColumn;
import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** What a client asked about her data, in her words. What the owner answered stands beside it; the words never change. */
@Entity
@Table(name = "rights_request")
class RightsRequest extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    private UUID submission;
    @Convert(converter = KindCode.class) private RequestKind kind;
    @Column(name = "made_at") private Instant madeAt;
    @Column(name = "due_on") private LocalDate dueOn;
    @Column(name = "closed_at") private Instant closedAt;
    @Column(name = "closed_by") private UUID closedBy;
    @Column(columnDefinition = "text") private String answer;
    @Version private int version;

    protected RightsRequest() {}

    RightsRequest(Visit visit, UUID submission, RequestKind kind, Instant now, UnaryOperator<String> seal) {
        super(visit.client.id, seal, submission, kind, now);
        this.visitId = visit.id;
        this.submission = submission;
        this.kind = kind;
        this.madeAt = now;
        this.dueOn = RequestKind.due(now.atZone(visit.zone()).toLocalDate());
    }

    static Optional<RightsRequest> submitted(UUID submission) {
        return find("submission", submission).firstResultOptional();
    }

    /** Newest first; those of a record that became one with this one are among them. */
    static List<RightsRequest> ofClient(UUID clientId) {
        return list("clientId in " + Client.SAME_PERSON + " order by madeAt desc, id", clientId);
    }

    /** The most pressing first. */
    static List<RightsRequest> open() {
        return list("closedAt is null order by dueOn, madeAt, id");
    }

    /** The first answer stays. */
    void close(UUID by, Instant now, UnaryOperator<String> seal) {
        needed(by, now);
        if (closedAt == null) {
            this.answer = sealed("answer", seal);
            closedAt = now;
            closedBy = by;
        }
    }

    UUID visitId() {
        return visitId;
    }

    RequestKind kind() {
        return kind;
    }

    Instant madeAt() {
        return madeAt;
    }

    LocalDate dueOn() {
        return dueOn;
    }

    Optional<Instant> closedAt() {
        return Optional.ofNullable(closedAt);
    }

    Optional<UUID> closedBy() {
        return Optional.ofNullable(closedBy);
    }

    String answer() {
        return answer;
    }

    @Converter
    public static class KindCode extends CodeColumn<RequestKind> {
        public KindCode() {
            super(RequestKind.values(), RequestKind::code);
        }
    }
}
