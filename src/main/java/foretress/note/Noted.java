package foretress.note;

import foretress.running.CodeColumn;
import foretress.vault.SealedRow;
import foretress.visit.Client;
import foretress.visit.OnFile;
import foretress.visit.Visit;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Converter;
import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;

/** One thing that staff wrote down about a client. One entered in error is struck out and stays. */
@Entity
@Table(name = "noted")
public class Noted extends SealedRow {
    @Column(name = "visit_id") private UUID visitId;
    @Convert(converter = KindCode.class) private NotedKind kind;
    private String submission;
    @Column(name = "noted_at") private Instant notedAt;
    @Column(name = "noted_by") private UUID notedBy;
    @Column(columnDefinition = "text") private String told;
    @Column(name = "struck_at") private Instant struckAt;
    @Column(name = "struck_by") private UUID struckBy;
    @Column(name = "struck_why", columnDefinition = "text") private String struckWhy;
    @Version private int version;

    protected Noted() {}

    /**
     * @param seal seals what is noted for the place it is given
     * @param told the same for what was answered by then
     */
    Noted(Visit visit, NotedKind kind, String submission, UUID by, Instant now, UnaryOperator<String> seal,
        UnaryOperator<String> told) {
        super(visit.client.id, seal, kind, submission, by, now);
        this.visitId = visit.id;
        this.kind = kind;
        this.submission = submission;
        this.notedAt = now;
        this.notedBy = by;
        this.told = sealed("told", told);
    }

    /** Entered in error: it says nothing any more. */
    void strike(UUID by, Instant now, UnaryOperator<String> seal) {
        this.struckAt = now;
        this.struckBy = by;
        this.struckWhy = sealed("struck_why", seal);
    }

    public boolean struck() {
        return struckAt != null;
    }

    public Optional<Instant> struckAt() {
        return Optional.ofNullable(struckAt);
    }

    public Optional<UUID> struckBy() {
        return Optional.ofNullable(struckBy);
    }

    static Optional<Noted> sent(UUID visitId, String submission) {
        return find("visitId = ?1 and submission = ?2", visitId, submission).firstResultOptional();
    }

    /** Newest first; those of a record that became one with this one are among them. */
    static List<Noted> ofClient(UUID clientId) {
        return OnFile.of(clientId, "noted", clientId,
            () -> list("clientId in " + Client.SAME_PERSON + " order by notedAt desc, id", clientId));
    }

    @Converter
    public static class KindCode extends CodeColumn<NotedKind> {
        public KindCode() {
            super(NotedKind.values(), NotedKind::code);
        }
    }

    public UUID visitId() {
        return visitId;
    }

    public NotedKind kind() {
        return kind;
    }

    public Instant notedAt() {
        return notedAt;
    }

    public UUID notedBy() {
        return notedBy;
    }

    String told() {
        return told;
    }

    String struckWhy() {
        return struckWhy;
    }
}
